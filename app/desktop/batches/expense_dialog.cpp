// SPDX-License-Identifier: MIT
#include "app/desktop/batches/expense_dialog.h"

#include <QDialogButtonBox>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>

#include "app/desktop/names/text_labels.h"
#include "app/desktop/widgets/date_edit.h"
#include "app/plot/number_text.h"
#include "app/report/batch_costs.h"
#include "core/money/amount_entry.h"

namespace desktop {

ExpenseDialog::ExpenseDialog(core::Expense expense, const core::Batch& batch, const std::string& currency,
                             core::Date today, Keep keep, QWidget* parent)
    : QDialog(parent),
      expense_(std::move(expense)),
      keep_(std::move(keep)),
      what_(new QLineEdit(QString::fromStdString(expense_.what))),
      amount_(new QLineEdit),
      amountFault_(new FaultLabel),
      day_(new DateEdit(today)),
      dayFault_(new FaultLabel) {
    const QString code = QString::fromStdString(batch.code);
    setObjectName(QStringLiteral("expenseDialog"));
    setWindowTitle(expense_.id.isSet() ? tr("Expense for %1").arg(code) : tr("New expense for %1").arg(code));
    what_->setObjectName(QStringLiteral("expenseWhat"));
    amount_->setObjectName(QStringLiteral("expenseAmount"));
    amount_->setAlignment(Qt::AlignRight);
    amount_->setMaxLength(16);
    if (expense_.id.isSet()) amount_->setText(plot::decimalText(static_cast<double>(expense_.hundredths) / 100, 2));
    day_->line()->setObjectName(QStringLiteral("expenseDay"));
    day_->setDayZero(batch.stuckOn);
    day_->setDate(expense_.spentOn);
    auto* whatFault = new FaultLabel;
    auto* restFault = new FaultLabel;
    marks_.add(QStringLiteral("What for"), what_, whatFault);
    marks_.add(QStringLiteral("Amount"), amount_, amountFault_);
    marks_.add(QStringLiteral("Spent on"), day_->line(), dayFault_);
    marks_.setRest(restFault);
    auto* money = new QHBoxLayout;
    money->addWidget(amount_);
    money->addWidget(new QLabel(QString::fromStdString(currency)));
    auto* amountLabel = new QLabel(tr("&Amount"));
    amountLabel->setBuddy(amount_);
    auto* dayLabel = new QLabel(tr("&Spent on"));
    dayLabel->setBuddy(day_->line());
    auto* hint = quietLabel(QStringLiteral("expenseHint"));
    hint->setText(tr("What went into this batch alone. %1").arg(report::costsLeftOut()));
    auto* form = new QFormLayout(this);
    form->addRow(hint);
    form->addRow(tr("&What for"), what_);
    form->addRow(QString(), whatFault);
    form->addRow(amountLabel, money);
    form->addRow(QString(), amountFault_);
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
    what_->setFocus();
}

void ExpenseDialog::agree() {
    marks_.clear();
    const core::Result<std::int64_t> amount = core::hundredthsFrom(amount_->text().toStdString());
    if (!amount) {
        marks_.show(amount.error());
        return;
    }
    if (!day_->date()) {
        dayFault_->setFault(day_->fault());
        return day_->line()->setFocus();
    }
    core::Expense expense = expense_;
    expense.what = what_->text().trimmed().toStdString();
    expense.hundredths = *amount;
    expense.spentOn = *day_->date();
    const Outcome outcome = keep_(expense);
    if (outcome.isDone) return accept();
    marks_.show(outcome.refusals);
}

}  // namespace desktop
