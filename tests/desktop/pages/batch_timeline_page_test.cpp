// SPDX-License-Identifier: MIT
// Each kind of event on a batch's page: added, corrected, deleted, taken back.
#include <QCheckBox>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QTableView>

#include "app/desktop/batches/batches_page.h"
#include "app/desktop/batches/event_table_model.h"
#include "app/desktop/batches/expense_dialog.h"
#include "app/desktop/figures/figure_panel.h"
#include "app/desktop/figures/figure_table_model.h"
#include "app/desktop/readings/care_dialog.h"
#include "app/desktop/readings/correct_readings_dialog.h"
#include "app/desktop/readings/reading_dialog.h"
#include "app/desktop/widgets/fault_label.h"
#include "app/plot/figure_view.h"
#include "app/report/plain_text.h"
#include "app/report/sheet.h"
#include "db/actions/event_actions.h"
#include "db/actions/session_actions.h"
#include "tests/desktop/pages/desk.h"

namespace {

using namespace std::chrono_literals;
using desktop::EventTableModel;
using pages::named;
using pages::press;
using pages::type;

core::Moment at(int day, std::chrono::hours hour = 12h) {
    return core::Moment{std::chrono::sys_days{core::addDays(support::stickingDay(), day)} + hour};
}

class Timeline : public pages::Desk {
  protected:
    Timeline() {
        fill(support::recordsOf(
            {support::aBatch().code("B260001A").looked(14, {.rooted = 9, .lost = 2}).looked(28, {.rooted = 9})}));
        const auto reading = [](core::Quantity quantity, int day, double value) {
            return core::Reading{.station = support::tubNorth, .quantity = quantity, .readAt = at(day), .value = value};
        };
        EXPECT_TRUE(db::recordReadings(
            logbook(),
            {reading(core::Quantity::SolutionEc, 7, 0.6), reading(core::Quantity::SolutionPh, 7, 6.0),
             reading(core::Quantity::SolutionTemperature, 7, 31.5), reading(core::Quantity::SolutionEc, 21, 0.8)},
            at(60)));
        page_ = std::make_unique<desktop::BatchesPage>(context());
        pages::show(*page_);
        page_->showBatch(id());
    }

    core::BatchId id() { return logbook().batchWithCode("B260001A"); }
    QTableView& table() { return named<QTableView>(*page_, "timeline"); }
    QString shown(int row, int column) { return table().model()->index(row, column).data().toString(); }
    QStringList column(int column) {
        QStringList texts;
        for (int row = 0; row < table().model()->rowCount(); ++row) texts << shown(row, column);
        return texts;
    }
    void choose(const QString& event, int nth = 0) {
        for (int row = 0; row < table().model()->rowCount(); ++row)
            if (shown(row, EventTableModel::Event) == event && nth-- == 0) table().selectRow(row);
        QApplication::setActiveWindow(page_.get());  // a dialog may have had it last
        table().setFocus();
    }
    void click(const char* name) { named<QPushButton>(*page_, name).click(); }
    std::vector<core::Reading> readings() {
        return plot::batchLifeOf(logbook(), batch("B260001A"), workspace_.shelves(), support::today()).readings;
    }
    std::vector<core::Care> care() { return logbook().care(support::tubNorth, at(0), at(121)); }
    std::vector<core::Expense> expenses() { return logbook().expenses(id()); }
    bool isSummed() {
        return pages::comesTrue([&] { return named<QPushButton>(*page_, "printBatch").isEnabled(); });
    }
    static QString faultsIn(const QWidget& dialog) {
        QStringList faults;
        for (const desktop::FaultLabel* label : dialog.findChildren<desktop::FaultLabel*>())
            if (!label->fault().isEmpty()) faults << label->fault();
        return faults.join(QLatin1Char('\n'));
    }
    void spend(const char* what, const char* amount) {
        click("newExpense");
        auto* dialog = pages::opened<desktop::ExpenseDialog>(*page_);
        ASSERT_NE(dialog, nullptr);
        named<QLineEdit>(*dialog, "expenseWhat").setText(QString::fromLatin1(what));
        named<QLineEdit>(*dialog, "expenseAmount").setText(QString::fromLatin1(amount));
        named<QPushButton>(*dialog, "saveExpense").click();
    }

    std::unique_ptr<desktop::BatchesPage> page_;
};

TEST_F(Timeline, TellsEverythingInOrderOfTimeWithADaysReadingsInOneLine) {
    const pages::Obeys rules(table().model());
    EXPECT_EQ(column(EventTableModel::Event), (QStringList{"stuck", "readings", "check", "readings", "check"}));
    EXPECT_EQ(shown(1, EventTableModel::What), QStringLiteral("EC 0.60 mS/cm, pH 6.0, solution 31.5 °C"));
    EXPECT_EQ(shown(2, EventTableModel::RootedInAll), QStringLiteral("9"));
    EXPECT_EQ(shown(2, EventTableModel::Day), QStringLiteral("14"));
    EXPECT_EQ(shown(2, EventTableModel::When), QStringLiteral("16/03/2026"));
}

TEST_F(Timeline, ShowsOneKindAndThenReadingsOneByOne) {
    auto& kind = named<QComboBox>(*page_, "timelineKind");
    kind.setCurrentIndex(1);
    EXPECT_EQ(column(EventTableModel::Event), (QStringList{"check", "check"}));
    kind.setCurrentIndex(2);
    EXPECT_EQ(table().model()->rowCount(), 4);
    kind.setCurrentIndex(0);
    EXPECT_EQ(table().model()->rowCount(), 5);
}

TEST_F(Timeline, AddsAReadingOfItsStation) {
    click("newReading");
    auto* dialog = pages::opened<desktop::ReadingDialog>(*page_);
    ASSERT_NE(dialog, nullptr);
    EXPECT_EQ(dialog->findChildren<QWidget*>(QRegularExpression("^stationLine")).size(), 1);
    named<QLineEdit>(*dialog, "reading0").setText(QStringLiteral("0.7"));
    named<QPushButton>(*dialog, "readingsDone").click();
    EXPECT_EQ(shown(table().model()->rowCount() - 1, EventTableModel::What), QStringLiteral("EC 0.70 mS/cm"));
    EXPECT_TRUE(workspace_.undo());
    EXPECT_EQ(table().model()->rowCount(), 5);
}

TEST_F(Timeline, CorrectsAReadingOfLastMonthAndRefusesOneThatCantBe) {
    choose(QStringLiteral("readings"));
    press(Qt::Key_Return);
    auto* dialog = pages::opened<desktop::CorrectReadingsDialog>(*page_);
    ASSERT_NE(dialog, nullptr);
    named<QLineEdit>(*dialog, "figure1").setText(QStringLiteral("61"));
    named<QPushButton>(*dialog, "saveReadings").click();
    EXPECT_TRUE(dialog->isVisible());
    EXPECT_TRUE(faultsIn(*dialog).contains(QStringLiteral("Did you mean 6.1?"))) << faultsIn(*dialog).toStdString();
    EXPECT_DOUBLE_EQ(readings()[1].value, 6.0);
    named<QLineEdit>(*dialog, "figure1").setText(QStringLiteral("6.1"));
    named<QPushButton>(*dialog, "saveReadings").click();
    EXPECT_DOUBLE_EQ(readings()[1].value, 6.1);
    EXPECT_EQ(readings()[0].readAt, at(7));  // what nobody touched is as it was
    EXPECT_TRUE(workspace_.undo());
    EXPECT_DOUBLE_EQ(readings()[1].value, 6.0);
}

TEST_F(Timeline, DeletesADaysReadingsInOneStepAndOneOfThemInTheDialog) {
    choose(QStringLiteral("readings"));
    press(Qt::Key_Delete);
    EXPECT_EQ(readings().size(), 1U);
    EXPECT_TRUE(workspace_.undo());
    EXPECT_EQ(readings().size(), 4U);
    choose(QStringLiteral("readings"));
    press(Qt::Key_F2);
    auto* dialog = pages::opened<desktop::CorrectReadingsDialog>(*page_);
    ASSERT_NE(dialog, nullptr);
    named<QCheckBox>(*dialog, "gone0").setChecked(true);
    named<QPushButton>(*dialog, "saveReadings").click();
    EXPECT_EQ(readings().size(), 3U);
}

TEST_F(Timeline, AddsCorrectsAndDeletesCare) {
    click("newCare");
    auto* dialog = pages::opened<desktop::CareDialog>(*page_);
    ASSERT_NE(dialog, nullptr);
    named<QComboBox>(*dialog, "careKind").setCurrentIndex(7);
    named<QPushButton>(*dialog, "saveCare").click();
    EXPECT_TRUE(dialog->isVisible());
    EXPECT_TRUE(faultsIn(*dialog).contains(QStringLiteral("a few words are needed")));
    named<QComboBox>(*dialog, "careKind").setCurrentIndex(1);
    named<QLineEdit>(*dialog, "careNote").setText(QStringLiteral("half strength"));
    named<QPushButton>(*dialog, "saveCare").click();
    ASSERT_EQ(care().size(), 1U);
    choose(QStringLiteral("care"));
    EXPECT_EQ(shown(table().currentIndex().row(), EventTableModel::What), QStringLiteral("solution changed"));
    press(Qt::Key_Return);
    dialog = pages::opened<desktop::CareDialog>(*page_);
    ASSERT_NE(dialog, nullptr);
    named<QLineEdit>(*dialog, "careNote").setText(QStringLiteral("quarter strength"));
    named<QPushButton>(*dialog, "saveCare").click();
    EXPECT_EQ(care()[0].note, "quarter strength");
    choose(QStringLiteral("care"));
    press(Qt::Key_Delete);
    EXPECT_TRUE(care().empty());
    EXPECT_TRUE(workspace_.undo());
    EXPECT_EQ(care()[0].note, "quarter strength");
}

TEST_F(Timeline, CountsWhatABatchCostForEachThatRooted) {
    spend("rooting gel", "12,50");
    ASSERT_EQ(expenses().size(), 1U);
    EXPECT_EQ(expenses()[0].hundredths, 1250);
    EXPECT_EQ(named<QLabel>(*page_, "batchCost").text(),
              QStringLiteral("12.50 EUR in all, 0.69 EUR for each of 18 rooted so far"));
    EXPECT_EQ(named<QLabel>(*page_, "batchCosts").text(), QStringLiteral("In EUR: written down 12.50"));
    choose(QStringLiteral("expense"));
    press(Qt::Key_Return);
    auto* dialog = pages::opened<desktop::ExpenseDialog>(*page_);
    ASSERT_NE(dialog, nullptr);
    EXPECT_EQ(named<QLineEdit>(*dialog, "expenseAmount").text(), QStringLiteral("12.50"));
    named<QLineEdit>(*dialog, "expenseAmount").setText(QStringLiteral("9"));
    named<QPushButton>(*dialog, "saveExpense").click();
    EXPECT_EQ(expenses()[0].hundredths, 900);
    choose(QStringLiteral("expense"));
    press(Qt::Key_Delete);
    EXPECT_TRUE(expenses().empty());
    EXPECT_TRUE(workspace_.undo());
    EXPECT_EQ(expenses()[0].hundredths, 900);
}

TEST_F(Timeline, RefusesAmountsThatAreNone) {
    for (const char* amount : {"", "-1", "1.234", "12 EUR", "1,000.00", "2000000000"}) {
        spend("gel", amount);
        auto* dialog = pages::opened<desktop::ExpenseDialog>(*page_);
        ASSERT_NE(dialog, nullptr) << amount;
        EXPECT_TRUE(faultsIn(*dialog).startsWith(QStringLiteral("Amount is"))) << amount;
        EXPECT_EQ(named<QLineEdit>(*dialog, "expenseAmount").text(), QString::fromLatin1(amount));
        delete dialog;
    }
    EXPECT_TRUE(expenses().empty());
}

TEST_F(Timeline, HasNoFigureForEachWhereNoneRooted) {
    fill(support::recordsOf({support::aBatch().code("B260001A")}));
    page_->showBatch(id());
    spend("gel", "3");
    EXPECT_EQ(named<QLabel>(*page_, "batchCost").text(),
              QStringLiteral("3.00 EUR in all; none rooted yet, so there is no figure for each"));
}

TEST_F(Timeline, DoesNotSayYetOfAClosedBatchWhereNoneRooted) {
    fill(support::recordsOf({support::aBatch().code("B260001A").looked(30, {.lost = 24})}));
    page_->showBatch(id());
    spend("gel", "3");
    EXPECT_EQ(named<QLabel>(*page_, "batchCost").text(),
              QStringLiteral("3.00 EUR in all; none rooted, so there is no figure for each"));
}

TEST_F(Timeline, HasRoomForEveryFaultOfAnExpense) {
    spend("gel", "\u22123");
    auto* dialog = pages::opened<desktop::ExpenseDialog>(*page_);
    ASSERT_NE(dialog, nullptr);
    named<QLineEdit>(*dialog, "expenseMinutes").setText(QStringLiteral("abc"));
    named<QPushButton>(*dialog, "saveExpense").click();
    QCoreApplication::processEvents();
    for (const QLabel* label : dialog->findChildren<QLabel*>())
        if (label->isVisible() && label->wordWrap()) {
            EXPECT_GE(label->height(), label->heightForWidth(label->width())) << label->text().toStdString();
        }
}

TEST_F(Timeline, KeepsANoteOnLeavingAndUndoTakesItBack) {
    auto& note = named<QPlainTextEdit>(*page_, "batchNote");
    note.setFocus();
    type(QStringLiteral("callus on most"));
    press(Qt::Key_Return, Qt::ControlModifier);
    EXPECT_EQ(batch("B260001A").batch.note, "callus on most");
    EXPECT_TRUE(workspace_.undo());
    EXPECT_EQ(batch("B260001A").batch.note, "");
    EXPECT_EQ(note.toPlainText(), QString());
    note.setFocus();
    type(QStringLiteral("mistake"));
    press(Qt::Key_Escape);
    EXPECT_EQ(note.toPlainText(), QString());
    EXPECT_TRUE(note.isVisible());  // the page is still there
    EXPECT_EQ(batch("B260001A").batch.note, "");
}

TEST_F(Timeline, ReopensABatchFromTheRowThatClosedIt) {
    ASSERT_TRUE(db::closeBatch(logbook(), id(), support::today(), "frost", support::today()));
    page_->showBatch(id());
    choose(QStringLiteral("closed"));
    EXPECT_EQ(named<QPushButton>(*page_, "deleteEvent").text(), QStringLiteral("Reopen"));
    press(Qt::Key_Delete);
    EXPECT_FALSE(batch("B260001A").batch.closedOn.has_value());
    EXPECT_TRUE(workspace_.undo());
    EXPECT_TRUE(batch("B260001A").batch.closedOn.has_value());
}

TEST_F(Timeline, DrawsTheStripWithTheReadingsThatThereAre) {
    ASSERT_TRUE(isSummed());
    auto& strip = named<desktop::FigurePanel>(*page_, "batchStrip");
    EXPECT_TRUE(strip.isVisible());
    EXPECT_TRUE(strip.view()->accessibleName().contains(QStringLiteral("solution temperature in 1 of 1")))
        << strip.view()->accessibleName().toStdString();
    EXPECT_EQ(strip.table()->rowCount(), 2 + 4);
}

TEST_F(Timeline, SaysOneFigureForTheOwnPastAndHowItIsCounted) {
    fill(support::recordsOf(
        {support::aBatch().looked(14, {.rooted = 12}).looked(35, {.rooted = 6}).looked(50, {.rooted = 3}),
         support::aBatch().code("B260001A").stuckOn(core::addDays(support::stickingDay(), 7)).looked(14)}));
    page_->showBatch(id());
    ASSERT_TRUE(isSummed());
    EXPECT_EQ(named<QLabel>(*page_, "ownPast").text(),
              QStringLiteral("75\u202f% (18 of 24) by day 35, in 1 batch stuck before this one"));
}

TEST_F(Timeline, PrintsWhatHappenedAroundTheBatch) {
    spend("rooting gel", "12.50");
    ASSERT_TRUE(isSummed());
    const QString text = report::plainText(*page_->sheet());
    for (const char* words : {"WHAT IT WENT THROUGH AT TUB NORTH", "solution pH", "rooting gel", "12.50 EUR in all"})
        EXPECT_TRUE(text.contains(QString::fromLatin1(words))) << words;
}

}  // namespace
