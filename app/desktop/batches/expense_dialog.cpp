// SPDX-License-Identifier: MIT
#include "app/desktop/batches/expense_dialog.h"

#include <QDialogButtonBox>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>

#include "app/desktop/batches/minutes_entry.h"
#include "app/desktop/names/text_labels.h"
#include "app/desktop/widgets/date_edit.h"
#include "app/plot/number_text.h"
#include "core/money/amount_entry.h"

namespace desktop {

ExpenseOwner ExpenseOwner::batch(const core::Batch& batch) {
    return {.name = QString::fromStdString(batch.code),
            .hint = ExpenseDialog::tr("What went into this batch alone. What batches share stands among the prices."),
            .dayZero = batch.stuckOn};
}

ExpenseOwner ExpenseOwner::session(const core::Session& session, int batches) {
    return {.name = ExpenseDialog::tr("the session of %1").arg(QString::fromStdString(core::isoText(session.date))),
            .hint = ExpenseDialog::tr("Shared by the cuttings of the session: %1.", "3 batches")
                        .arg(plot::batchesText(batches)),
            .dayZero = {}};
}

ExpenseDialog::ExpenseDialog(core::Expense expense, const ExpenseOwner& owner, const std::string& currency,
                             core::Date today, Keep keep, QWidget* parent)
    : QDialog(parent),
      expense_(std::move(expense)),
      keep_(std::move(keep)),
      what_(new QLineEdit(QString::fromStdString(expense_.what))),
      amount_(new QLineEdit),
      amountFault_(new FaultLabel),
      minutes_(new QLineEdit),
      minutesFault_(new FaultLabel),
      day_(new DateEdit(today)),
      dayFault_(new FaultLabel) {
    setObjectName(QStringLiteral("expenseDialog"));
    setWindowTitle(expense_.id.isSet() ? tr("Expense for %1").arg(owner.name)
                                       : tr("New expense for %1").arg(owner.name));
    what_->setObjectName(QStringLiteral("expenseWhat"));
    amount_->setObjectName(QStringLiteral("expenseAmount"));
    minutes_->setObjectName(QStringLiteral("expenseMinutes"));
    if (expense_.id.isSet()) amount_->setText(plot::decimalText(static_cast<double>(expense_.hundredths) / 100, 2));
    minutes_->setText(minutesShown(expense_.minutes));
    day_->line()->setObjectName(QStringLiteral("expenseDay"));
    day_->setDayZero(owner.dayZero);
    day_->setDate(expense_.spentOn);
    build(owner, currency);
    what_->setFocus();
}

void ExpenseDialog::addFigure(QFormLayout& form, const QString& label, QLineEdit* line, const QString& unit,
                              FaultLabel* fault) {
    line->setAlignment(Qt::AlignRight);
    line->setMaxLength(16);
    auto* row = new QHBoxLayout;
    row->addWidget(line);
    row->addWidget(new QLabel(unit));
    auto* caption = new QLabel(label);
    caption->setBuddy(line);
    form.addRow(caption, row);
    form.addRow(QString(), fault);
}

void ExpenseDialog::build(const ExpenseOwner& owner, const std::string& currency) {
    auto* whatFault = new FaultLabel;
    auto* restFault = new FaultLabel;
    marks_.add(QStringLiteral("What for"), what_, whatFault);
    marks_.add(QStringLiteral("Amount"), amount_, amountFault_);
    marks_.add(QStringLiteral("Minutes"), minutes_, minutesFault_);
    marks_.add(QStringLiteral("Spent on"), day_->line(), dayFault_);
    marks_.setRest(restFault);
    auto* dayLabel = new QLabel(tr("&Spent on"));
    dayLabel->setBuddy(day_->line());
    auto* hint = quietLabel(QStringLiteral("expenseHint"));
    hint->setText(owner.hint);
    auto* form = new QFormLayout(this);
    form->addRow(hint);
    form->addRow(tr("&What for"), what_);
    form->addRow(QString(), whatFault);
    addFigure(*form, tr("&Amount"), amount_, QString::fromStdString(currency), amountFault_);
    addFigure(*form, tr("&Minutes"), minutes_, tr("of work, or blank"), minutesFault_);
    form->addRow(dayLabel, day_);
    form->addRow(QString(), dayFault_);
    form->addRow(restFault);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Cancel, this);
    auto* agreed = buttons->addButton(expense_.id.isSet() ? tr("Save expense") : tr("Record expense"),
                                      QDialogButtonBox::AcceptRole);
    agreed->setObjectName(QStringLiteral("saveExpense"));
    agreed->setDefault(true);
    connect(buttons, &QDialogButtonBox::accepted, this, &ExpenseDialog::agree);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    form->addRow(buttons);
}

bool ExpenseDialog::readFigures(core::Expense& expense) {
    core::Refusals faults;
    expense.minutes = minutesFrom(minutes_->text(), faults);
    // Work alone costs no money.
    if (expense.minutes && amount_->text().trimmed().isEmpty()) {
        expense.hundredths = 0;
    } else if (const auto amount = core::hundredthsFrom(amount_->text().toStdString())) {
        expense.hundredths = *amount;
    } else {
        faults.insert(faults.begin(), amount.error().begin(), amount.error().end());
    }
    return marks_.show(faults);
}

void ExpenseDialog::agree() {
    core::Expense expense = expense_;
    if (!readFigures(expense)) return;
    if (!day_->date()) {
        dayFault_->setFault(day_->fault());
        return day_->line()->setFocus();
    }
    expense.what = what_->text().trimmed().toStdString();
    expense.spentOn = *day_->date();
    const Outcome outcome = keep_(expense);
    if (outcome.isDone) return accept();
    marks_.show(outcome.refusals);
}

}  // namespace desktop
