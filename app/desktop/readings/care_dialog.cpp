// SPDX-License-Identifier: MIT
#include "app/desktop/readings/care_dialog.h"

#include <QComboBox>
#include <QDialogButtonBox>
#include <QFormLayout>
#include <QLineEdit>
#include <QPushButton>

#include "app/desktop/readings/moment_edit.h"
#include "app/desktop/widgets/caution_strip.h"
#include "app/desktop/widgets/date_edit.h"
#include "app/plot/readings_text.h"
#include "core/mixing/cautions_in_place.h"

namespace desktop {

CareDialog::CareDialog(core::Care care, const QString& station, core::Date today, Keep keep, QWidget* parent)
    : QDialog(parent),
      care_(std::move(care)),
      keep_(std::move(keep)),
      at_(new MomentEdit(today, care_.doneAt)),
      atFault_(new FaultLabel),
      kind_(new QComboBox),
      note_(new QLineEdit(QString::fromStdString(care_.note))) {
    setObjectName(QStringLiteral("careDialog"));
    setWindowTitle(care_.id.isSet() ? tr("Care of %1").arg(station) : tr("New care of %1").arg(station));
    kind_->setObjectName(QStringLiteral("careKind"));
    for (const core::CareKind kind : core::allCareKinds) kind_->addItem(plot::careText(kind), static_cast<int>(kind));
    kind_->setCurrentIndex(kind_->findData(static_cast<int>(care_.kind)));
    note_->setObjectName(QStringLiteral("careNote"));
    note_->setToolTip(tr("What and how much: 2 L of rainwater"));
    auto* noteFault = new FaultLabel;
    marks_.add(QStringLiteral("Done at"), at_->day()->line(), atFault_);
    marks_.add(QStringLiteral("Note"), note_, noteFault);
    marks_.setRest(noteFault);
    auto* form = new QFormLayout(this);
    form->addRow(tr("&What"), kind_);
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
    connect(kind_, &QComboBox::currentIndexChanged, this, &CareDialog::mind);
    mind();
    kind_->setFocus();
}

void CareDialog::mind() {
    cautions_->mind(core::cautionsOnCare(static_cast<core::CareKind>(kind_->currentData().toInt())));
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
    const Outcome outcome = keep_(care);
    if (outcome.isDone) return accept();
    marks_.show(outcome.refusals);
}

}  // namespace desktop
