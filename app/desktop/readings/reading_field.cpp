// SPDX-License-Identifier: MIT
#include "app/desktop/readings/reading_field.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QLocale>

#include "app/desktop/names/text_labels.h"
#include "app/plot/quantity_text.h"
#include "core/climate/stage_bands.h"

namespace desktop {

ReadingManner::ReadingManner(const core::Shelves& shelves) : units(shelves.facts.units) {
    for (const core::Quantity quantity : core::allQuantities)
        bands[quantity] = core::bandWhileRooting(shelves, quantity);
}

ReadingField::ReadingField(core::Quantity quantity, const ReadingManner& manner, std::optional<double> last,
                           const QString& label, QWidget* parent)
    : QWidget(parent),
      quantity_(quantity),
      units_(manner.units),
      band_(manner.bands.at(quantity)),
      last_(last),
      line_(new QLineEdit) {
    line_->setAlignment(Qt::AlignRight);
    line_->setMaxLength(60);  // those of the fields behind it may be typed here
    line_->setInputMethodHints(Qt::ImhFormattedNumbersOnly);
    line_->setFixedWidth(fontMetrics().horizontalAdvance(QStringLiteral("000000")) + fontMetrics().height());
    if (last) line_->setToolTip(tr("Last time: %1").arg(plot::quantityText(quantity, *last, units_)));
    auto* name = new QLabel(label);
    name->setBuddy(line_);
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(fontMetrics().height() / 3);
    row->addWidget(name);
    row->addWidget(line_);
    const QString unit = plot::quantityUnit(quantity, units_);
    if (!unit.isEmpty()) row->addWidget(new QLabel(unit));
    setFocusProxy(line_);
    setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Fixed);
    connect(line_, &QLineEdit::textChanged, this, [this] {
        askedAbout_.clear();
        sentence_.clear();
        line_->setAccessibleDescription({});
    });
}

core::ReadingEntry ReadingField::entry() const {
    return core::readingEntryFrom(line_->text().toStdString(), quantity_, units_, band_, last_);
}

bool ReadingField::isBlank() const {
    return line_->text().trimmed().isEmpty();
}

std::optional<double> ReadingField::stored() const {
    return entry().stored;
}

bool ReadingField::confirm() {
    const core::ReadingEntry typed = entry();
    sentence_.clear();
    if (!typed.fault.empty())
        sentence_ = QString::fromStdString(typed.fault);
    else if (!typed.question.empty() && askedAbout_ != line_->text())
        sentence_ =
            tr("%1 Enter again keeps it.", "a question about a figure").arg(QString::fromStdString(typed.question));
    askedAbout_ = line_->text();
    line_->setAccessibleDescription(sentence_);
    return sentence_.isEmpty();
}

void ReadingField::setStored(double value) {
    // Digits that core's parser reads in every language, with the decimal sign that people here write.
    QString text =
        QString::number(core::shownValue(value, quantity_, units_), 'f', plot::decimalsOf(quantity_, units_));
    line_->setText(text.replace(QLatin1Char('.'), QLocale().decimalPoint()));
}

void ReadingField::clear() {
    line_->clear();
}

}  // namespace desktop
