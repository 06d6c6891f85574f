// SPDX-License-Identifier: MIT
// Potting on, expenses with minutes, and what a session's batches share, on a batch's page.
#include <QApplication>
#include <QFormLayout>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QTableView>
#include <algorithm>

#include "app/desktop/batches/batches_page.h"
#include "app/desktop/batches/event_table_model.h"
#include "app/desktop/batches/expense_dialog.h"
#include "app/desktop/batches/potting_dialog.h"
#include "app/desktop/batches/session_facts_dialog.h"
#include "app/desktop/batches/stuck_words.h"
#include "app/desktop/widgets/fault_label.h"
#include "db/actions/session_actions.h"
#include "tests/desktop/pages/desk.h"

namespace {

using desktop::EventTableModel;
using pages::named;
using pages::press;
using pages::type;

class BatchMoney : public pages::Desk {
  protected:
    BatchMoney() {
        fill(support::recordsOf({support::aBatch().code("B260001A").looked(14, {.rooted = 9, .lost = 2}),
                                 support::aBatch().code("B260002C")}));
        page_ = std::make_unique<desktop::BatchesPage>(context());
        pages::show(*page_);
        page_->showBatch(id("B260001A"));
    }

    core::BatchId id(const char* code) { return logbook().batchWithCode(code); }
    core::SessionId session() { return batch("B260001A").batch.session; }
    QStringList happened(const QString& event) {
        QStringList texts;
        const auto* model = named<QTableView>(*page_, "timeline").model();
        for (int row = 0; row < model->rowCount(); ++row)
            if (model->index(row, EventTableModel::Event).data().toString() == event)
                texts << model->index(row, EventTableModel::What).data().toString();
        return texts;
    }
    void choose(const QString& event) {
        auto& table = named<QTableView>(*page_, "timeline");
        for (int row = 0; row < table.model()->rowCount(); ++row)
            if (table.model()->index(row, EventTableModel::Event).data().toString() == event) table.selectRow(row);
        QApplication::setActiveWindow(page_.get());  // a dialog may have had it last
        table.setFocus();
    }
    void click(const char* name) { named<QPushButton>(*page_, name).click(); }
    template <class Dialog>
    Dialog& come() {
        Dialog* found = nullptr;
        for (Dialog* each : page_->findChildren<Dialog*>())
            if (each->isVisible()) found = each;
        if (found == nullptr) throw std::logic_error("nothing opened");
        QApplication::setActiveWindow(found);
        return *found;
    }
    /// A dialog that was agreed to is gone by the next event.
    template <class Dialog>
    bool isOpen() {
        const auto dialogs = page_->findChildren<Dialog*>();
        return std::ranges::any_of(dialogs, [](const Dialog* each) { return each->isVisible(); });
    }
    static void write(QWidget& dialog, const char* field, const QString& text) {
        auto& line = named<QLineEdit>(dialog, field);
        line.setFocus();
        line.selectAll();
        type(text);
    }
    static QString faults(const QWidget& dialog) {
        QStringList sentences;
        for (const auto* label : dialog.findChildren<desktop::FaultLabel*>())
            if (!label->fault().isEmpty()) sentences << label->fault();
        return sentences.join('\n');
    }
    std::unique_ptr<desktop::BatchesPage> page_;
};

TEST_F(BatchMoney, PotsOnAllThatRootedWithEnterAlone) {
    click("newPotting");
    auto& dialog = come<desktop::PottingDialog>();
    EXPECT_EQ(named<QLineEdit>(dialog, "pottingPotted").text(), "9");
    press(Qt::Key_Return);
    const auto pottings = logbook().pottings(id("B260001A"));
    ASSERT_EQ(pottings.size(), 1U);
    EXPECT_EQ(pottings.front().potted, 9);
    EXPECT_EQ(pottings.front().lost, 0);
    EXPECT_EQ(pottings.front().countedOn, support::today());
    ASSERT_EQ(happened("potted on").size(), 1);
    EXPECT_TRUE(happened("potted on").front().startsWith("+9 potted on; usable 100"));
    ASSERT_TRUE(workspace_.undo());
    EXPECT_TRUE(logbook().pottings(id("B260001A")).empty());
}

TEST_F(BatchMoney, CountsWhatWasLostAfterPottingAndTellsHowManyAreUsable) {
    click("newPotting");
    write(come<desktop::PottingDialog>(), "pottingDay", "-1");
    press(Qt::Key_Return);
    click("newPotting");
    auto& dialog = come<desktop::PottingDialog>();
    EXPECT_EQ(named<QLineEdit>(dialog, "pottingPotted").text(), "0") << "all that rooted is potted already";
    write(dialog, "pottingLost", "2");
    EXPECT_EQ(named<QLabel>(dialog, "pottingInWords").text(),
              "9 rooted by then; with this count 9 potted on in all, of which 7 are usable.");
    press(Qt::Key_Return);
    EXPECT_FALSE(isOpen<desktop::PottingDialog>());
    ASSERT_EQ(happened("potted on").size(), 2);
    EXPECT_TRUE(happened("potted on").back().startsWith("+2 lost after potting; usable 78"));
    EXPECT_TRUE(happened("potted on").back().endsWith("(7 of 9)"));
    bool isTold = false;
    for (const QLabel* label : page_->findChildren<QLabel*>())
        isTold = isTold || label->text().endsWith("(7 of 9) usable");
    EXPECT_TRUE(isTold);
}

TEST_F(BatchMoney, RefusesToPotMoreThanRootedWhereItStands) {
    click("newPotting");
    auto& dialog = come<desktop::PottingDialog>();
    write(dialog, "pottingPotted", "12");
    press(Qt::Key_Return);
    ASSERT_TRUE(isOpen<desktop::PottingDialog>());
    EXPECT_TRUE(faults(dialog).contains("Potted")) << faults(dialog).toStdString();
    write(dialog, "pottingPotted", "some");
    press(Qt::Key_Return);
    EXPECT_TRUE(faults(dialog).contains("some")) << faults(dialog).toStdString();
    EXPECT_EQ(named<QLineEdit>(dialog, "pottingPotted").text(), "some");
    EXPECT_TRUE(logbook().pottings(id("B260001A")).empty());
}

TEST_F(BatchMoney, CorrectsAndDeletesACountInTheTimeline) {
    click("newPotting");
    come<desktop::PottingDialog>();
    press(Qt::Key_Return);
    choose("potted on");
    press(Qt::Key_Return);
    auto& dialog = come<desktop::PottingDialog>();
    write(dialog, "pottingPotted", "8");
    press(Qt::Key_Return);
    EXPECT_EQ(logbook().pottings(id("B260001A")).front().potted, 8);
    choose("potted on");
    press(Qt::Key_Delete);
    EXPECT_TRUE(logbook().pottings(id("B260001A")).empty());
    ASSERT_TRUE(workspace_.undo());
    EXPECT_EQ(logbook().pottings(id("B260001A")).front().potted, 8);
}

TEST_F(BatchMoney, TakesMinutesWithAnExpenseAndNoMoneyForWorkAlone) {
    click("newExpense");
    auto& dialog = come<desktop::ExpenseDialog>();
    write(dialog, "expenseWhat", "washing tubs");
    write(dialog, "expenseMinutes", "soon");
    press(Qt::Key_Return);
    EXPECT_TRUE(faults(dialog).contains("Minutes is \u201csoon\u201d")) << faults(dialog).toStdString();
    write(dialog, "expenseMinutes", "12,5");
    press(Qt::Key_Return);
    ASSERT_FALSE(isOpen<desktop::ExpenseDialog>());
    const auto expenses = logbook().expenses(id("B260001A"));
    ASSERT_EQ(expenses.size(), 1U);
    EXPECT_EQ(expenses.front().minutes, 12.5);
    EXPECT_EQ(expenses.front().hundredths, 0);
    EXPECT_EQ(happened("expense"), QStringList("washing tubs: 12.5 min"));
}

TEST_F(BatchMoney, KeepsTheMinutesOfASessionWithItsFactsInOneStep) {
    click("editSession");
    auto& dialog = come<desktop::SessionFactsDialog>();
    write(dialog, "sessionFactsWorker", "Ines");
    write(dialog, "sessionFactsMinutes", "90");
    press(Qt::Key_Return);
    ASSERT_FALSE(isOpen<desktop::SessionFactsDialog>());
    auto expenses = logbook().expenses(session());
    ASSERT_EQ(expenses.size(), 1U);
    EXPECT_EQ(expenses.front().minutes, 90);
    EXPECT_EQ(happened("expense"), QStringList("work: 90 min (shared by its session)"));
    ASSERT_TRUE(workspace_.undo());
    EXPECT_TRUE(logbook().expenses(session()).empty());
    EXPECT_NE(logbook().sessions().front().worker, "Ines");
    ASSERT_TRUE(workspace_.redo());
    click("editSession");
    auto& again = come<desktop::SessionFactsDialog>();
    EXPECT_EQ(named<QLineEdit>(again, "sessionFactsMinutes").text(), "90");
    write(again, "sessionFactsMinutes", "-5");
    press(Qt::Key_Return);
    EXPECT_TRUE(faults(again).contains("Minutes")) << faults(again).toStdString();
    auto& minutes = named<QLineEdit>(again, "sessionFactsMinutes");
    minutes.selectAll();
    press(Qt::Key_Delete);
    press(Qt::Key_Return);
    ASSERT_FALSE(isOpen<desktop::SessionFactsDialog>());
    EXPECT_TRUE(logbook().expenses(session()).empty()) << "blank: the prices say how long a session takes";
}

TEST_F(BatchMoney, AddsCorrectsAndRemovesExpensesOfASession) {
    click("editSession");
    auto& facts = come<desktop::SessionFactsDialog>();
    named<QPushButton>(facts, "addSessionExpense").click();
    auto& expense = come<desktop::ExpenseDialog>();
    EXPECT_EQ(named<QLabel>(expense, "expenseHint").text(), "Shared by the cuttings of the session: 2 batches.");
    write(expense, "expenseWhat", "hormone");
    write(expense, "expenseAmount", "4.50");
    press(Qt::Key_Return);
    auto& list = named<QListWidget>(facts, "sessionExpenses");
    ASSERT_EQ(list.count(), 1);
    EXPECT_EQ(list.item(0)->text(), "02/03/2026  hormone: 4.50 EUR");
    EXPECT_EQ(happened("expense"), QStringList("hormone: 4.50 EUR (shared by its session)"));
    QApplication::setActiveWindow(&facts);
    list.setFocus();
    press(Qt::Key_F2);
    auto& changed = come<desktop::ExpenseDialog>();
    write(changed, "expenseMinutes", "30");
    press(Qt::Key_Return);
    EXPECT_EQ(list.item(0)->text(), "02/03/2026  hormone: 4.50 EUR, 30 min");
    QApplication::setActiveWindow(&facts);
    list.setFocus();
    press(Qt::Key_Delete);
    EXPECT_EQ(list.count(), 0);
    ASSERT_TRUE(workspace_.undo());
    EXPECT_EQ(list.count(), 1);
}

TEST_F(BatchMoney, CorrectsASharedExpenseFromTheTimelineOfAnyOfItsBatches) {
    click("editSession");
    named<QPushButton>(come<desktop::SessionFactsDialog>(), "addSessionExpense").click();
    write(come<desktop::ExpenseDialog>(), "expenseWhat", "hormone");
    write(come<desktop::ExpenseDialog>(), "expenseAmount", "4.50");
    press(Qt::Key_Return);
    come<desktop::SessionFactsDialog>().close();
    page_->showBatch(id("B260002C"));
    choose("expense");
    press(Qt::Key_Return);
    write(come<desktop::ExpenseDialog>(), "expenseAmount", "5");
    press(Qt::Key_Return);
    EXPECT_EQ(logbook().expenses(session()).front().hundredths, 500);
    choose("expense");
    press(Qt::Key_Delete);
    EXPECT_TRUE(logbook().expenses(session()).empty());
}

TEST(StuckWords, TellTheLotInUseAndItsAgeOnTheDayOfSticking) {
    core::Shelves shelves = support::someShelves();
    core::BatchRecord record = support::aBatch().treated(support::weakGel);
    const QString without = desktop::treatmentText(record.batch, shelves);
    shelves.lots.push_back({.id = {1},
                            .name = "bottle 3",
                            .treatment = support::weakGel,
                            .usedFrom = core::addDays(support::stickingDay(), -43)});
    EXPECT_EQ(desktop::treatmentText(record.batch, shelves), without + "; lot bottle 3, in use for 43 days");
    shelves.lots.back().madeOn = core::addDays(support::stickingDay(), -90);
    EXPECT_EQ(desktop::treatmentText(record.batch, shelves), without + "; lot bottle 3, made 90 days before");
    record.batch.stuckOn = core::addDays(support::stickingDay(), -60);
    EXPECT_EQ(desktop::treatmentText(record.batch, shelves), without) << "that was before its first use";
}

}  // namespace
