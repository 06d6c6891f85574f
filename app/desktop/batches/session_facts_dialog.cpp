// SPDX-License-Identifier: MIT
#include "app/desktop/batches/session_facts_dialog.h"

#include <QDialogButtonBox>
#include <QFormLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>

#include "app/desktop/widgets/date_edit.h"
#include "app/plot/number_text.h"

namespace desktop {

SessionFactsDialog::SessionFactsDialog(const core::Session& session, int batches, core::Date today, Keep keep,
                                       QWidget* parent)
    : QDialog(parent),
      session_(session),
      keep_(std::move(keep)),
      day_(new DateEdit(today)),
      worker_(new QLineEdit(QString::fromStdString(session.worker))),
      note_(new QLineEdit(QString::fromStdString(session.note))),
      dayFault_(new FaultLabel) {
    setObjectName(QStringLiteral("sessionFactsDialog"));
    setWindowTitle(tr("Session of %1").arg(QString::fromStdString(core::isoText(session.date))));
    day_->setDate(session.date);
    day_->line()->setObjectName(QStringLiteral("sessionFactsDay"));
    worker_->setObjectName(QStringLiteral("sessionFactsWorker"));
    note_->setMinimumWidth(fontMetrics().averageCharWidth() * 44);
    auto* rest = new FaultLabel;
    marks_.add(QStringLiteral("Date"), day_->line(), dayFault_);
    marks_.setRest(rest);

    auto* form = new QFormLayout(this);
    form->addRow(new QLabel(tr("These stand for the whole session: %1.", "3 batches").arg(plot::batchesText(batches))));
    auto* dayLabel = new QLabel(tr("&Day"));
    dayLabel->setBuddy(day_->line());
    form->addRow(dayLabel, day_);
    form->addRow(QString(), dayFault_);
    form->addRow(tr("&Who"), worker_);
    form->addRow(tr("N&ote"), note_);
    form->addRow(rest);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Cancel, this);
    auto* agreed = buttons->addButton(tr("Save session"), QDialogButtonBox::AcceptRole);
    agreed->setObjectName(QStringLiteral("saveSessionFacts"));
    agreed->setDefault(true);
    connect(buttons, &QDialogButtonBox::accepted, this, &SessionFactsDialog::agree);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    form->addRow(buttons);
}

void SessionFactsDialog::agree() {
    if (!day_->date()) {
        dayFault_->setFault(day_->fault());
        return day_->line()->setFocus();
    }
    session_.date = *day_->date();
    session_.worker = worker_->text().trimmed().toStdString();
    session_.note = note_->text().trimmed().toStdString();
    const Outcome outcome = keep_(session_);
    if (outcome.isDone) return accept();
    marks_.show(outcome.refusals);
}

}  // namespace desktop
