// SPDX-License-Identifier: MIT
#include "app/desktop/batches/session_expenses.h"

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QListWidget>
#include <QPushButton>
#include <QVBoxLayout>
#include <algorithm>

#include "app/desktop/batches/batch_events.h"
#include "app/desktop/batches/batch_page_model.h"
#include "app/desktop/batches/expense_dialog.h"
#include "app/desktop/names/text_labels.h"
#include "app/plot/number_text.h"

namespace desktop {

SessionExpenses::SessionExpenses(BatchPageModel& model, QWidget* parent)
    : QWidget(parent), model_(model), list_(new QListWidget), fault_(new FaultLabel) {
    list_->setObjectName(QStringLiteral("sessionExpenses"));
    list_->setAccessibleName(tr("Expenses of this session"));
    list_->setTabKeyNavigation(false);
    list_->setMinimumHeight(fontMetrics().height() * 4);
    list_->setMaximumHeight(fontMetrics().height() * 7);
    list_->installEventFilter(this);
    auto* caption = new QLabel(tr("Expenses of this &session, shared by its cuttings"));
    caption->setBuddy(list_);
    auto* buttons = new QHBoxLayout;
    buttons->addWidget(makeButton(tr("&Add\u2026"), "addSessionExpense", tr("Insert"), &SessionExpenses::add));
    buttons->addWidget(edit_ = makeButton(tr("&Edit\u2026"), "editSessionExpense", tr("F2"), &SessionExpenses::edit));
    buttons->addWidget(remove_ =
                           makeButton(tr("Remo&ve"), "removeSessionExpense", tr("Delete"), &SessionExpenses::remove));
    QLabel* atOnce = quietLabelSaying(tr("Each is kept at once."));
    atOnce->setAlignment(Qt::AlignVCenter | Qt::AlignTrailing);
    buttons->addWidget(atOnce, 1);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(caption);
    layout->addWidget(list_);
    layout->addWidget(fault_);
    layout->addLayout(buttons);
    connect(list_, &QListWidget::itemDoubleClicked, this, &SessionExpenses::edit);
    connect(&model_, &BatchPageModel::viewChanged, this, &SessionExpenses::fill);
    fill();
}

QPushButton* SessionExpenses::makeButton(const QString& text, const char* name, const QString& tip,
                                         void (SessionExpenses::*act)()) {
    auto* button = new QPushButton(text);
    button->setObjectName(QLatin1String(name));
    button->setToolTip(tip);
    button->setAutoDefault(false);
    connect(button, &QPushButton::clicked, this, act);
    return button;
}

void SessionExpenses::fill() {
    if (!model_.hasBatch()) return;
    const int row = list_->currentRow();
    list_->clear();
    for (const core::Expense& expense : model_.view().life.sharedExpenses)
        list_->addItem(
            tr("%1  %2", "a day, what was spent")
                .arg(plot::shortDateText(expense.spentOn), spentText(expense, model_.shelves().facts.currency)));
    if (list_->count() > 0) list_->setCurrentRow(std::clamp(row, 0, list_->count() - 1));
    for (QPushButton* each : {edit_, remove_}) each->setEnabled(list_->count() > 0);
}

const core::Expense* SessionExpenses::chosen() const {
    const int row = list_->currentRow();
    if (!model_.hasBatch() || row < 0) return nullptr;
    const std::vector<core::Expense>& expenses = model_.view().life.sharedExpenses;
    return row < static_cast<int>(expenses.size()) ? &expenses[static_cast<std::size_t>(row)] : nullptr;
}

void SessionExpenses::add() {
    core::Expense expense;
    expense.session = model_.view().session.id;
    expense.spentOn = model_.view().session.date;
    open(expense);
}

void SessionExpenses::edit() {
    if (const core::Expense* expense = chosen()) open(*expense);
}

void SessionExpenses::remove() {
    const core::Expense* expense = chosen();
    if (expense == nullptr) return;
    const Outcome outcome = model_.remove(core::Expense(*expense));
    fault_->setFault(sentencesOf(outcome.refusals));
}

void SessionExpenses::open(const core::Expense& expense) {
    fault_->setFault({});
    auto* dialog = new ExpenseDialog(
        expense, ExpenseOwner::session(model_.view().session, model_.batchesOfSession()),
        model_.shelves().facts.currency, model_.today(),
        [this](const core::Expense& spent) { return model_.keep(spent); }, this);
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    connect(dialog, &QDialog::finished, list_, [this] { list_->setFocus(Qt::OtherFocusReason); });
    dialog->open();
}

bool SessionExpenses::eventFilter(QObject* watched, QEvent* event) {
    if (watched != list_ || event->type() != QEvent::KeyPress) return QWidget::eventFilter(watched, event);
    switch (static_cast<QKeyEvent*>(event)->key()) {
        case Qt::Key_Insert:
            add();
            return true;
        case Qt::Key_F2:
            edit();
            return true;
        case Qt::Key_Delete:
            remove();
            return true;
        default:
            return false;
    }
}

}  // namespace desktop
