// SPDX-License-Identifier: MIT
#include "app/desktop/batches/session_facts_dialog.h"

#include <QDialogButtonBox>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <algorithm>

#include "app/desktop/batches/batch_page_model.h"
#include "app/desktop/batches/minutes_entry.h"
#include "app/desktop/batches/session_expenses.h"
#include "app/desktop/widgets/date_edit.h"
#include "app/plot/number_text.h"

namespace desktop {

SessionFactsDialog::SessionFactsDialog(BatchPageModel& model, QWidget* parent)
    : QDialog(parent),
      model_(model),
      session_(model.view().session),
      day_(new DateEdit(model.today())),
      worker_(new QLineEdit(QString::fromStdString(session_.worker))),
      note_(new QLineEdit(QString::fromStdString(session_.note))),
      minutes_(new QLineEdit),
      dayFault_(new FaultLabel) {
    setObjectName(QStringLiteral("sessionFactsDialog"));
    setWindowTitle(tr("Session of %1").arg(QString::fromStdString(core::isoText(session_.date))));
    day_->setDate(session_.date);
    day_->line()->setObjectName(QStringLiteral("sessionFactsDay"));
    worker_->setObjectName(QStringLiteral("sessionFactsWorker"));
    minutes_->setObjectName(QStringLiteral("sessionFactsMinutes"));
    minutes_->setAlignment(Qt::AlignRight);
    minutes_->setMaxLength(16);
    minutes_->setMaximumWidth(fontMetrics().horizontalAdvance(QStringLiteral("0000000000")) +
                              2 * fontMetrics().height());
    note_->setMinimumWidth(fontMetrics().averageCharWidth() * 44);
    takeWork();
    build();
    connect(&model_, &BatchPageModel::viewChanged, this, &SessionFactsDialog::takeWork);
}

/// What the logbook has now; what is being typed stays.
void SessionFactsDialog::takeWork() {
    if (!model_.hasBatch()) return;
    const std::vector<core::Expense>& expenses = model_.view().life.sharedExpenses;
    const auto found = std::ranges::find_if(
        expenses, [](const core::Expense& expense) { return expense.minutes && expense.hundredths == 0; });
    work_ = found == expenses.end() ? core::Expense{} : *found;
    if (!minutes_->isModified()) minutes_->setText(minutesShown(work_.minutes));
}

void SessionFactsDialog::build() {
    auto* minutesFault = new FaultLabel;
    auto* rest = new FaultLabel;
    marks_.add(QStringLiteral("Date"), day_->line(), dayFault_);
    marks_.add(QStringLiteral("Minutes"), minutes_, minutesFault);
    marks_.setRest(rest);
    auto* form = new QFormLayout(this);
    form->addRow(new QLabel(
        tr("These stand for the whole session: %1.", "3 batches").arg(plot::batchesText(model_.batchesOfSession()))));
    auto* dayLabel = new QLabel(tr("&Day"));
    dayLabel->setBuddy(day_->line());
    form->addRow(dayLabel, day_);
    form->addRow(QString(), dayFault_);
    form->addRow(tr("&Who"), worker_);
    form->addRow(tr("N&ote"), note_);
    auto* minutesRow = new QHBoxLayout;
    minutesRow->addWidget(minutes_);
    minutesRow->addWidget(new QLabel(tr("minutes of work; blank: as the prices say")), 1);
    auto* minutesLabel = new QLabel(tr("It &took"));
    minutesLabel->setBuddy(minutes_);
    form->addRow(minutesLabel, minutesRow);
    form->addRow(QString(), minutesFault);
    form->addRow(new SessionExpenses(model_));
    form->addRow(rest);
    addButtons(*form);
}

void SessionFactsDialog::addButtons(QFormLayout& form) {
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Cancel, this);
    auto* agreed = buttons->addButton(tr("Save session"), QDialogButtonBox::AcceptRole);
    agreed->setObjectName(QStringLiteral("saveSessionFacts"));
    agreed->setDefault(true);
    connect(buttons, &QDialogButtonBox::accepted, this, &SessionFactsDialog::agree);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    form.addRow(buttons);
}

void SessionFactsDialog::agree() {
    if (!day_->date()) {
        dayFault_->setFault(day_->fault());
        return day_->line()->setFocus();
    }
    core::Refusals faults;
    const std::optional<double> minutes = minutesFrom(minutes_->text(), faults);
    if (!marks_.show(faults)) return;
    session_.date = *day_->date();
    session_.worker = worker_->text().trimmed().toStdString();
    session_.note = note_->text().trimmed().toStdString();
    core::Expense work = work_;
    if (!work.id.isSet()) {
        work.what = tr("work", "what minutes are spent on").toStdString();
        work.spentOn = session_.date;
    }
    work.minutes = minutes;
    const bool isWorkChanged = work.minutes != work_.minutes;
    const Outcome outcome = isWorkChanged ? model_.change(session_, work) : model_.change(session_);
    if (outcome.isDone) return accept();
    marks_.show(outcome.refusals);
}

}  // namespace desktop
