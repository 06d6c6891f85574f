// SPDX-License-Identifier: MIT
#include "app/desktop/readings/station_line.h"

#include <QAction>
#include <QComboBox>
#include <QEvent>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QMenu>
#include <QRegularExpression>
#include <QToolButton>
#include <QVBoxLayout>
#include <algorithm>

#include "app/desktop/names/text_labels.h"
#include "app/desktop/widgets/fault_label.h"
#include "app/desktop/widgets/wrapping_row.h"
#include "app/plot/climate_text.h"
#include "app/plot/quantity_text.h"
#include "app/plot/readings_text.h"
#include "core/care/care.h"
#include "core/climate/reading_entry.h"

namespace desktop {

StationLine::StationLine(const core::Station& station, const std::vector<core::Quantity>& quantities,
                         const LastReadings& last, const ReadingManner& manner, QWidget* parent)
    : QWidget(parent), station_(station), last_(last), manner_(manner) {
    setObjectName(QStringLiteral("stationLine%1").arg(station.id.value));
    build();
    for (const core::Quantity quantity : quantities) addField(quantity);
}

void StationLine::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    // Only now: coming into a window puts the fields, which were added last, behind the rest of the line.
    if (!fields_.empty()) setTabOrder(fields_.back()->line(), more_);
    setTabOrder(more_, care_);
    setTabOrder(care_, note_);
}

void StationLine::build() {
    auto* name = new QLabel(QString::fromStdString(station_.name));
    name->setTextFormat(Qt::PlainText);
    name->setWordWrap(true);
    name->setFixedWidth(fontMetrics().averageCharWidth() * 18);
    row_ = new WrappingRow;
    row_->setSpacing(fontMetrics().height() / 2);
    row_->addWidget(name);
    addOffer();
    addCare();
    fault_ = new FaultLabel;
    saved_ = quietLabel(QStringLiteral("lineSaved"));
    saved_->hide();
    lastWords_ = quietLabel(QStringLiteral("lineLast"));
    lastWords_->hide();
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, fontMetrics().height() / 4, 0, fontMetrics().height() / 4);
    layout->addLayout(row_);
    layout->addWidget(lastWords_);
    layout->addWidget(fault_);
    layout->addWidget(saved_);
}

void StationLine::addField(core::Quantity quantity) {
    const auto found = last_.find(quantity);
    auto* field = new ReadingField(quantity, manner_,
                                   found == last_.end() ? std::optional<double>() : std::optional(found->second),
                                   plot::quantityShortName(quantity));
    const auto place = static_cast<int>(fields_.size()) + 1;  // after the name
    field->line()->setObjectName(QStringLiteral("reading%1").arg(static_cast<int>(quantity)));
    field->line()->setAccessibleName(
        tr("%1, %2", "station, quantity").arg(QString::fromStdString(station_.name), plot::quantityName(quantity)));
    field->line()->installEventFilter(this);
    row_->insertWidget(place, field);
    QWidget* before = fields_.empty() ? nullptr : fields_.back()->line();
    if (before != nullptr) setTabOrder(before, field->line());
    setTabOrder(field->line(), more_);
    fields_.push_back(field);
    fillOffer();
}

void StationLine::addOffer() {
    more_ = new QToolButton;
    more_->setObjectName(QStringLiteral("moreQuantities"));
    more_->setText(tr("more", "button: other quantities to read"));
    more_->setAccessibleName(tr("%1: read something else too").arg(QString::fromStdString(station_.name)));
    more_->setToolTip(tr("Read something else too"));
    more_->setPopupMode(QToolButton::InstantPopup);
    more_->setMenu(new QMenu(more_));
    row_->addWidget(more_);
}

void StationLine::fillOffer() {
    more_->menu()->clear();
    for (const core::Quantity quantity : core::allQuantities) {
        if (std::ranges::any_of(fields_, [&](const ReadingField* field) { return field->quantity() == quantity; }))
            continue;
        connect(more_->menu()->addAction(plot::quantityName(quantity)), &QAction::triggered, this, [this, quantity] {
            addField(quantity);
            fields_.back()->line()->setFocus(Qt::OtherFocusReason);
        });
    }
    more_->setVisible(!more_->menu()->isEmpty());
}

void StationLine::addCare() {
    care_ = new QComboBox;
    care_->setObjectName(QStringLiteral("care"));
    care_->setToolTip(tr("What was done to %1").arg(QString::fromStdString(station_.name)));
    care_->addItem(tr("no care"));
    for (const core::CareKind kind : core::allCareKinds) care_->addItem(plot::careText(kind), static_cast<int>(kind));
    auto* label = new QLabel(tr("Care"));
    label->setBuddy(care_);
    note_ = new QLineEdit;
    note_->setObjectName(QStringLiteral("lineNote"));
    note_->setMinimumWidth(fontMetrics().averageCharWidth() * 14);
    auto* noteLabel = new QLabel(tr("Note"));
    noteLabel->setBuddy(note_);
    auto* done = new QWidget;
    auto* half = new QHBoxLayout(done);
    half->setContentsMargins(0, 0, 0, 0);
    half->setSpacing(fontMetrics().height() / 2);
    for (QWidget* widget : std::initializer_list<QWidget*>{label, care_, noteLabel, note_}) half->addWidget(widget);
    row_->addWidget(done);
    care_->installEventFilter(this);
    note_->installEventFilter(this);
}

void StationLine::begin() {
    if (fields_.empty())
        care_->setFocus(Qt::OtherFocusReason);
    else
        fields_.front()->line()->setFocus(Qt::OtherFocusReason);
}

bool StationLine::isBlank() const {
    return care_->currentIndex() == 0 && note_->text().trimmed().isEmpty() &&
           std::ranges::all_of(fields_, [](const ReadingField* field) { return field->isBlank(); });
}

bool StationLine::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() != QEvent::KeyPress) return QWidget::eventFilter(watched, event);
    const int key = static_cast<QKeyEvent*>(event)->key();
    if (key != Qt::Key_Return && key != Qt::Key_Enter) return QWidget::eventFilter(watched, event);
    goOn(watched);
    return true;
}

void StationLine::goOn(QObject* from) {
    const auto found = std::ranges::find_if(fields_, [&](const ReadingField* field) { return field->line() == from; });
    if (found != fields_.end()) {
        const auto place = static_cast<std::size_t>(found - fields_.begin());
        const std::size_t typed = spread(place);
        if (typed == 0) return;
        for (std::size_t i = place; i < place + typed; ++i) {
            if (confirm(*fields_[i])) continue;
            if (typed > 1) fields_[i]->line()->selectAll();  // what is typed next stands in its place
            return;
        }
        if (place + typed < fields_.size()) return fields_[place + typed]->line()->setFocus(Qt::TabFocusReason);
    }
    emit ended();
}

std::size_t StationLine::spread(std::size_t from) {
    static const QRegularExpression blanks(QStringLiteral("\\s+"));
    const QStringList figures = fields_[from]->line()->text().split(blanks, Qt::SkipEmptyParts);
    const auto count = static_cast<std::size_t>(figures.size());
    if (count < 2) return 1;
    if (from + count > fields_.size()) {
        showFault(tr("There are %1 figures for %2 fields; \u201cmore\u201d adds one.")
                      .arg(figures.size())
                      .arg(fields_.size() - from));
        return 0;
    }
    for (std::size_t i = 0; i < count; ++i) fields_[from + i]->line()->setText(figures[static_cast<qsizetype>(i)]);
    return count;
}

void StationLine::setLast(const QString& words) {
    lastWords_->setText(words);
    lastWords_->setVisible(!words.isEmpty());
}

bool StationLine::confirm(ReadingField& field) {
    const bool isSound = field.confirm();
    fault_->setFault(field.sentence());
    if (!isSound) field.line()->setFocus(Qt::OtherFocusReason);
    return isSound;
}

bool StationLine::confirm() {
    if (care_->currentIndex() == 0 && !note_->text().trimmed().isEmpty() &&
        std::ranges::all_of(fields_, [](const ReadingField* field) { return field->isBlank(); })) {
        showFault(tr("There is a note, but no reading and no care that it belongs to; choose a care."));
        care_->setFocus(Qt::OtherFocusReason);
        return false;
    }
    for (std::size_t i = 0; i < fields_.size(); ++i)
        if (spread(i) == 0 || !confirm(*fields_[i])) return false;
    return true;
}

db::StationVisit StationLine::visit(core::Moment at) const {
    db::StationVisit visit{.station = station_.id, .readings = {}, .care = {}, .gone = {}};
    const std::string note = note_->text().trimmed().toStdString();
    const bool hasCare = care_->currentIndex() > 0;
    for (const ReadingField* field : fields_)
        if (const std::optional<double> stored = field->stored())
            visit.readings.push_back({.id = {},
                                      .station = station_.id,
                                      .quantity = field->quantity(),
                                      .readAt = at,
                                      .value = *stored,
                                      .note = hasCare ? std::string() : note});
    if (hasCare)
        visit.care.push_back({.id = {},
                              .station = station_.id,
                              .doneAt = at,
                              .kind = static_cast<core::CareKind>(care_->currentData().toInt()),
                              .note = note});
    return visit;
}

void StationLine::showFault(const QString& sentence) {
    fault_->setFault(sentence);
}

void StationLine::setSaved(const QString& sentence) {
    for (ReadingField* field : fields_) field->clear();
    care_->setCurrentIndex(0);
    note_->clear();
    fault_->setFault({});
    saved_->setText(sentence);
    saved_->show();
}

QString lastInWords(const std::vector<core::Reading>& newest, core::StationId station, const core::DisplayUnits& units,
                    core::Moment now) {
    std::vector<core::Reading> here;
    for (const core::Reading& reading : newest)
        if (reading.station == station) here.push_back(reading);
    if (here.empty()) return {};
    const core::Reading& latest = *std::ranges::max_element(here, {}, &core::Reading::readAt);
    return StationLine::tr("last: %1; %2", "figures, how long ago")
        .arg(plot::readingsInWords(here, units), plot::agoText(latest.readAt, now));
}

std::vector<core::Quantity> quantitiesAt(const core::Station& station, const LastReadings& last,
                                         const core::Shelves& shelves) {
    std::vector<core::Quantity> quantities;
    for (const core::Quantity quantity : core::allQuantities)
        if (last.contains(quantity)) quantities.push_back(quantity);
    if (!quantities.empty()) return quantities;
    const core::Method* method = core::find(shelves.methods, station.method);
    return core::usualQuantities(method == nullptr ? std::string() : method->name);
}

}  // namespace desktop
