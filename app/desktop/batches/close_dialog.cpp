// SPDX-License-Identifier: MIT
#include "app/desktop/batches/close_dialog.h"

#include <QComboBox>
#include <QDialogButtonBox>
#include <QFormLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>

#include "app/desktop/widgets/caution_strip.h"
#include "app/desktop/widgets/date_edit.h"
#include "app/plot/number_text.h"
#include "core/mixing/cautions_in_place.h"

namespace desktop {

CloseDialog::CloseDialog(const core::BatchRecord& record, const core::Shelves& shelves, core::Date today, Keep keep,
                         QWidget* parent)
    : QDialog(parent),
      keep_(std::move(keep)),
      day_(new DateEdit(today)),
      reason_(new QComboBox),
      dayFault_(new FaultLabel),
      reasonFault_(new FaultLabel) {
    const QString code = QString::fromStdString(record.batch.code);
    setObjectName(QStringLiteral("closeDialog"));
    setWindowTitle(tr("Close %1").arg(code));
    day_->setDayZero(record.batch.stuckOn);
    day_->setDate(today);
    reason_->setObjectName(QStringLiteral("closeReason"));
    reason_->setEditable(true);
    reason_->addItems({tr("nothing left to wait for"), tr("station needed"), tr("end of the season"), tr("given up")});
    reason_->setCurrentIndex(0);
    reason_->lineEdit()->selectAll();
    marks_.add(QStringLiteral("Closed on"), day_->line(), dayFault_);
    marks_.add(QStringLiteral("Reason for closing"), reason_, reasonFault_);
    marks_.setRest(reasonFault_);

    const core::Tally tally = core::tallyOf(record.batch, record.checks);
    auto* form = new QFormLayout(this);
    auto* what = new QLabel(
        tr("%1 stay undecided and are counted as such; the batch can be reopened.", "3 cuttings stay undecided")
            .arg(plot::cuttingsText(tally.undecided())));
    what->setWordWrap(true);
    form->addRow(what);
    auto* dayLabel = new QLabel(tr("&Closed on"));
    dayLabel->setBuddy(day_->line());
    form->addRow(dayLabel, day_);
    form->addRow(QString(), dayFault_);
    form->addRow(tr("&Reason"), reason_);
    form->addRow(QString(), reasonFault_);
    form->addRow(CautionStrip::saying(core::cautionsOnLeaving({&record.batch, 1}, shelves)));
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Cancel, this);
    auto* agreed = buttons->addButton(tr("Close batch"), QDialogButtonBox::AcceptRole);
    agreed->setObjectName(QStringLiteral("closeBatchAgreed"));
    agreed->setDefault(true);
    connect(buttons, &QDialogButtonBox::accepted, this, &CloseDialog::agree);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    form->addRow(buttons);
    reason_->setFocus();
}

void CloseDialog::agree() {
    if (!day_->date()) {
        dayFault_->setFault(day_->fault());
        return day_->line()->setFocus();
    }
    const Outcome outcome = keep_(*day_->date(), reason_->currentText());
    if (outcome.isDone) return accept();
    marks_.show(outcome.refusals);
}

}  // namespace desktop
