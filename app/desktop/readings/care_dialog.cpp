// SPDX-License-Identifier: MIT
#include "app/desktop/readings/care_dialog.h"

#include <QComboBox>
#include <QDialogButtonBox>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>

#include "app/desktop/readings/moment_edit.h"
#include "app/desktop/widgets/caution_strip.h"
#include "app/desktop/widgets/date_edit.h"
#include "app/plot/number_text.h"
#include "app/plot/readings_text.h"
#include "core/mixing/cautions_in_place.h"
#include "core/units/number_entry.h"

namespace desktop {

namespace {

/// Into what water or solution goes.
bool takesVolume(core::CareKind kind) {
    return kind == core::CareKind::ToppedUp || kind == core::CareKind::SolutionChanged;
}

}  // namespace

CareDialog::CareDialog(core::Care care, const QString& station, const core::DisplayUnits& units, core::Date today,
                       Keep keep, QWidget* parent)
    : QDialog(parent),
      care_(std::move(care)),
      unit_(units.volume),
      keep_(std::move(keep)),
      at_(new MomentEdit(today, care_.doneAt)),
      atFault_(new FaultLabel),
      kind_(new QComboBox),
      note_(new QLineEdit(QString::fromStdString(care_.note))),
      volume_(new QLineEdit),
      volumeFault_(new FaultLabel) {
    setObjectName(QStringLiteral("careDialog"));
    setWindowTitle(care_.id.isSet() ? tr("Care of %1").arg(station) : tr("New care of %1").arg(station));
    for (const core::CareKind kind : core::allCareKinds) kind_->addItem(plot::careText(kind), static_cast<int>(kind));
    kind_->setCurrentIndex(kind_->findData(static_cast<int>(care_.kind)));
    if (care_.litres) volume_->setText(plot::amountText(core::shownVolume(*care_.litres, unit_)));
    build();
    connect(kind_, &QComboBox::currentIndexChanged, this, &CareDialog::showVolume);
    connect(kind_, &QComboBox::currentIndexChanged, this, &CareDialog::mind);
    showVolume();
    mind();
    kind_->setFocus();
}

void CareDialog::build() {
    kind_->setObjectName(QStringLiteral("careKind"));
    note_->setObjectName(QStringLiteral("careNote"));
    note_->setToolTip(tr("What it was: rainwater, half-strength feed"));
    volume_->setObjectName(QStringLiteral("careVolume"));
    volume_->setAccessibleName(tr("How much"));
    volume_->setAlignment(Qt::AlignRight);
    volume_->setMaxLength(12);
    volume_->setFixedWidth(fontMetrics().averageCharWidth() * 12);
    volumeRow_ = new QWidget;
    auto* volumes = new QHBoxLayout(volumeRow_);
    volumes->setContentsMargins(0, 0, 0, 0);
    volumes->addWidget(volume_);
    volumes->addWidget(new QLabel(plot::volumeUnitText(unit_)));
    volumes->addStretch();
    volumeLabel_ = new QLabel(tr("&How much"));
    volumeLabel_->setBuddy(volume_);
    auto* noteFault = new FaultLabel;
    marks_.add(QStringLiteral("Done at"), at_->day()->line(), atFault_);
    marks_.add(QStringLiteral("Litres"), volume_, volumeFault_);
    marks_.add(QStringLiteral("Note"), note_, noteFault);
    marks_.setRest(noteFault);
    auto* form = new QFormLayout(this);
    form->addRow(tr("&What"), kind_);
    form->addRow(volumeLabel_, volumeRow_);
    volumeLabel_->setBuddy(volume_);  // not the row, which the form takes for it
    form->addRow(QString(), volumeFault_);
    form->addRow(tr("&Done at"), at_);
    form->addRow(QString(), atFault_);
    form->addRow(tr("N&ote"), note_);
    form->addRow(QString(), noteFault);
    form->addRow(cautions_ = new CautionStrip);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Cancel, this);
    auto* agreed =
        buttons->addButton(care_.id.isSet() ? tr("Save care") : tr("Record care"), QDialogButtonBox::AcceptRole);
    agreed->setObjectName(QStringLiteral("saveCare"));
    agreed->setDefault(true);
    connect(buttons, &QDialogButtonBox::accepted, this, &CareDialog::agree);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    form->addRow(buttons);
}

void CareDialog::showVolume() {
    const bool isAsked = takesVolume(static_cast<core::CareKind>(kind_->currentData().toInt()));
    volumeLabel_->setVisible(isAsked);
    volumeRow_->setVisible(isAsked);
    if (!isAsked) volumeFault_->setFault({});
}

void CareDialog::mind() {
    cautions_->mind(core::cautionsOnCare(static_cast<core::CareKind>(kind_->currentData().toInt())));
}

bool CareDialog::readVolume(core::Care& care) {
    care.litres.reset();
    if (!takesVolume(care.kind) || volume_->text().trimmed().isEmpty()) return true;
    // Untouched it stays what it was, with all its digits.
    if (care_.litres && volume_->text() == plot::amountText(core::shownVolume(*care_.litres, unit_))) {
        care.litres = care_.litres;
        return true;
    }
    const std::optional<double> shown = core::numberFrom(volume_->text().toStdString());
    if (shown && *shown > 0 && core::storedVolume(*shown, unit_) <= core::mostCareLitres) {
        care.litres = core::storedVolume(*shown, unit_);
        return true;
    }
    volumeFault_->setFault(tr("How much is \u201c%1\u201d; a number above 0, up to %2, is allowed.")
                               .arg(volume_->text().trimmed(), plot::volumeText(core::mostCareLitres, unit_)));
    volume_->setFocus();
    return false;
}

void CareDialog::agree() {
    marks_.clear();
    const std::optional<core::Moment> at = at_->moment();
    if (!at) {
        atFault_->setFault(at_->fault());
        return at_->day()->line()->setFocus();
    }
    core::Care care = care_;
    care.doneAt = *at;
    care.kind = static_cast<core::CareKind>(kind_->currentData().toInt());
    care.note = note_->text().trimmed().toStdString();
    if (!readVolume(care)) return;
    const Outcome outcome = keep_(care);
    if (outcome.isDone) return accept();
    marks_.show(outcome.refusals);
}

}  // namespace desktop
