// SPDX-License-Identifier: MIT
#include "app/desktop/round/round_dialog.h"

#include <QAbstractItemModelTester>
#include <QApplication>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QTest>

#include "app/desktop/logbook/logbook_commands.h"
#include "app/desktop/round/round_model.h"
#include "app/desktop/round/round_view.h"
#include "tests/desktop/desk.h"
#include "tests/support/builders.h"

namespace {

using desktop::RoundModel;

class Round : public support::Desk {
  protected:
    void begin(std::vector<core::BatchRecord> batches) {
        ASSERT_TRUE(window().commands().openFile(fileWith("round.strikebook", std::move(batches))));
        show();
        openRound();
    }

    void openRound() {
        QApplication::setActiveWindow(&window());  // as window managers do once a dialog is gone
        QTest::keyClick(&window(), Qt::Key_R, Qt::ControlModifier);
        keys_ += 2;
        dialog_ = find<desktop::RoundDialog>("roundDialog");
        view_ = dialog_->findChild<desktop::RoundView*>("roundTable");
        // A dialog counts as active while its parent is, so what is waited for is where the keys go.
        ASSERT_TRUE(QTest::qWaitFor([&] { return QApplication::focusWidget() == view_; })) << "typing starts at once";
    }

    /// Each character is one key; Enter commits through the event queue, which a person's next key waits for too.
    void type(const QString& text) {
        for (const QChar character : text) {
            QTest::keyClick(QApplication::focusWidget(), character.toLatin1());
            ++keys_;
        }
    }
    void enter() {
        QTest::keyClick(QApplication::focusWidget(), Qt::Key_Enter, Qt::KeypadModifier);
        ++keys_;
        support::settle();
    }
    [[nodiscard]] QAbstractButton& button(const char* name) {
        auto* found = dialog_->findChild<QAbstractButton*>(name);
        if (!found) throw std::logic_error(std::string("no button named ") + name);
        return *found;
    }
    void press(const char* name) { QTest::mouseClick(&button(name), Qt::LeftButton); }
    void clickRow(int row) {
        const QRect place = view_->visualRect(view_->model()->index(row, RoundModel::Plant));
        QTest::mouseClick(view_->viewport(), Qt::LeftButton, {}, place.center());
    }
    [[nodiscard]] QString cell(int row, int column) const {
        return view_->model()->index(row, column).data().toString();
    }
    [[nodiscard]] core::Tally tally(int number) {
        return workspace_->logbook().batchLines()[static_cast<std::size_t>(number)].tally;
    }
    [[nodiscard]] QString count() const { return dialog_->findChild<QLabel*>("roundCount")->text(); }

    QPointer<desktop::RoundDialog> dialog_;
    desktop::RoundView* view_{};
    int keys_{};
};

/// A round as rounds are: what is typed for each batch, and what should come of it.
struct TypedLook {
    const char* typed;
    bool needsEnter;
    int rooted, lost;
};
constexpr TypedLook honestRound[] = {
    {"*", false, 0, 0},    {"+3", true, 3, 0},    {"+1", true, 1, 0}, {"-2r", true, 0, 2}, {"*", false, 0, 0},
    {"+12", true, 12, 0},  {"+4-1d", true, 4, 1}, {"*", false, 0, 0}, {"+2", true, 2, 0},  {"-1p", true, 0, 1},
    {"*", false, 0, 0},    {"+5", true, 5, 0},    {"*", false, 0, 0}, {"-3d", true, 0, 3}, {"+10", true, 10, 0},
    {"+6-2r", true, 6, 2}, {"+1", true, 1, 0},    {"*", false, 0, 0}, {"-1r", true, 0, 1}, {"+7", true, 7, 0}};

TEST_F(Round, OfTwentyBatchesTakesAtMostEightyKeysSavingIncluded) {
    begin(dueBatches(20));
    for (const TypedLook& look : honestRound) {
        type(look.typed);
        if (look.needsEnter) enter();
    }
    support::settle();
    std::printf("keystrokes for a round of 20 batches: %d\n", keys_);
    RecordProperty("keystrokes", keys_);
    EXPECT_EQ(keys_, 62) << "the figure that docs/manual/round_of_checks.md gives";
    EXPECT_LE(keys_, 80);
    EXPECT_FALSE(dialog_) << "the round is saved and closed";
    for (int number = 0; number < 20; ++number) {
        EXPECT_EQ(tally(number).rooted, honestRound[number].rooted);
        EXPECT_EQ(tally(number).lost, honestRound[number].lost);
        EXPECT_EQ(tally(number).lastCheckedOn, today());
    }
    EXPECT_EQ(workspace_->logbook().history().size(), 2U) << "one step for all of it";
    const auto record = workspace_->logbook().batch(workspace_->logbook().batchLines()[3].batch.id);
    EXPECT_EQ(record->checks.front().losses.front().cause,
              std::ranges::find(workspace_->shelves().lossCauses, 'r', &core::LossCause::key)->id);
    action("editUndo")->trigger();
    for (int number = 0; number < 20; ++number) EXPECT_FALSE(tally(number).lastCheckedOn);
}

TEST_F(Round, TakesNothingNewWithOneKeyAndGoesOn) {
    begin(dueBatches(3));
    type("* ");
    EXPECT_EQ(view_->currentIndex().row(), 2);
    EXPECT_EQ(cell(0, RoundModel::Entry), "*");
    EXPECT_EQ(cell(1, RoundModel::Entry), "*") << "the space bar says the same";
    type("*");
    ASSERT_TRUE(dialog_) << "one key does not end a round";
    EXPECT_EQ(QApplication::focusWidget()->objectName(), "roundSave");
    enter();
    EXPECT_FALSE(dialog_);
    for (int number = 0; number < 3; ++number) EXPECT_EQ(tally(number).lastCheckedOn, today());
}

TEST_F(Round, PassesOverARowThatHasAnEntryWithoutChangingIt) {
    begin(dueBatches(2));
    type("+3");
    enter();
    view_->goToRow(0);
    type(" ");
    EXPECT_EQ(cell(0, RoundModel::Entry), "+3");
    EXPECT_EQ(view_->currentIndex().row(), 1);
}

TEST_F(Round, SaysWhatAnEntryMeansWhileItIsTyped) {
    begin({support::aBatch().stuckOn(core::addDays(today(), -14)).stuck(24).looked(7, {.rooted = 9})});
    type("12");
    EXPECT_EQ(cell(0, RoundModel::Meaning), "12 rooted (+3), 12 undecided");
    type("-1r");
    EXPECT_EQ(cell(0, RoundModel::Meaning), "12 rooted (+3), 1 lost (rotted), 11 undecided");
}

TEST_F(Round, KeepsTheCursorOnARefusedEntryWithTheReasonBesideIt) {
    begin(dueBatches(2));
    type("25");
    enter();
    EXPECT_EQ(view_->currentIndex().row(), 0);
    EXPECT_TRUE(cell(0, RoundModel::Meaning).contains("25")) << cell(0, RoundModel::Meaning).toStdString();
    EXPECT_TRUE(cell(0, RoundModel::Meaning).contains("0 to 24"));
    EXPECT_TRUE(dialog_->findChild<QWidget*>("roundFault")->accessibleName().contains("0 to 24"))
        << "in full at the foot";
    auto* editor = qobject_cast<QLineEdit*>(QApplication::focusWidget());
    ASSERT_TRUE(editor);
    EXPECT_EQ(editor->text(), "25") << "what was typed stands there still";
    QTest::keyClick(editor, Qt::Key_Backspace);
    enter();
    EXPECT_EQ(view_->currentIndex().row(), 1);
    EXPECT_EQ(cell(0, RoundModel::Meaning), "2 rooted, 22 undecided");
}

TEST_F(Round, SaysThatNothingIsSavedBeforeItIs) {
    begin(dueBatches(3));
    EXPECT_EQ(count(), "Nothing entered yet of 3 batches.");
    type("3");
    enter();
    EXPECT_EQ(count(), "Not saved yet: 1 of 3 checks. Of 24 cuttings looked at, 21 stay undecided.");
    EXPECT_FALSE(tally(0).lastCheckedOn);
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return, Qt::ControlModifier);
    support::settle();
    EXPECT_FALSE(dialog_);
    EXPECT_EQ(tally(0).rooted, 3);
    EXPECT_FALSE(tally(1).lastCheckedOn) << "a blank row stays due";
}

TEST_F(Round, IsLeftByEscAsItWasAndStandsThereAgain) {
    begin(dueBatches(3));
    type("3");
    enter();
    type("99");
    enter();
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Escape);  // the innermost thing: the open cell
    support::settle();
    ASSERT_TRUE(dialog_ && dialog_->isVisible());
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Escape);
    support::settle();
    EXPECT_FALSE(dialog_) << "nothing is asked";
    EXPECT_EQ(workspace_->logbook().history().size(), 1U) << "everything is as it was";
    openRound();
    EXPECT_EQ(cell(0, RoundModel::Entry), "3");
    EXPECT_EQ(cell(1, RoundModel::Entry), "99") << "what can't be is kept too";
    EXPECT_TRUE(button("roundAfresh").isVisible());
    button("roundAfresh").click();
    EXPECT_EQ(cell(0, RoundModel::Entry), "");
    EXPECT_FALSE(button("roundAfresh").isVisible());
}

TEST_F(Round, ForgetsWhatWasTypedOnceItIsSaved) {
    begin(dueBatches(2));
    type("3");
    enter();
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return, Qt::ControlModifier);
    support::settle();
    openRound();
    EXPECT_EQ(view_->model()->rowCount(), 1);
    EXPECT_EQ(cell(0, RoundModel::Entry), "");
    EXPECT_FALSE(button("roundAfresh").isVisible());
}

TEST_F(Round, TakesPlainNumbersAsTheGrowerPrefersAndRemembersIt) {
    begin({support::aBatch().stuckOn(core::addDays(today(), -14)).stuck(24).looked(7, {.rooted = 9, .lost = 1})});
    type("12");
    EXPECT_EQ(cell(0, RoundModel::Rooted), "12 (+3)");
    EXPECT_EQ(cell(0, RoundModel::Undecided), "11 of 24");
    button("roundNew").click();
    EXPECT_EQ(cell(0, RoundModel::Entry), "+3") << "what stands there keeps what it says";
    EXPECT_EQ(cell(0, RoundModel::Rooted), "+3 (12)");
    EXPECT_EQ(cell(0, RoundModel::Lost), "(1)");
    view_->goToRow(0);
    type("4");
    EXPECT_EQ(cell(0, RoundModel::Meaning), "4 newly rooted (13 in all), 10 undecided");
    button("roundAfresh").click();
    dialog_->reject();
    support::settle();
    openRound();
    EXPECT_TRUE(button("roundNew").isChecked());
    view_->goToRow(0);
    type("4");
    EXPECT_EQ(cell(0, RoundModel::Rooted), "+4 (13)");
}

TEST_F(Round, GoesByMouseAlone) {
    begin(dueBatches(3));
    for (int presses = 0; presses < 4; ++presses) press("roundMoreRooted");
    press("roundFewerRooted");
    press("roundMoreLost");
    press("roundMoreLost");
    press("roundCause_r");  // both of those that had no cause
    press("roundCause_d");  // and one more
    EXPECT_EQ(cell(0, RoundModel::Entry), "+3-2r-1d");
    EXPECT_EQ(cell(0, RoundModel::Meaning), "3 rooted, 2 lost (rotted), 1 lost (dried out), 18 undecided");
    press("roundFewerLost");
    EXPECT_EQ(cell(0, RoundModel::Entry), "+3-2r");
    clickRow(1);
    press("roundNothingNew");
    EXPECT_EQ(view_->currentIndex().row(), 2) << "nothing new goes on";
    press("roundMoreWithdrawn");
    press("roundSave");
    support::settle();
    EXPECT_FALSE(dialog_);
    EXPECT_EQ(tally(0).rooted, 3);
    EXPECT_EQ(tally(0).lost, 2);
    EXPECT_EQ(tally(1).lastCheckedOn, today());
    EXPECT_EQ(tally(2).withdrawn, 1);
}

TEST_F(Round, TakesWhatIsBeingTypedBeforeAButtonActs) {
    begin(dueBatches(1));
    type("-2");
    press("roundCause_r");
    EXPECT_EQ(cell(0, RoundModel::Entry), "-2r");
    EXPECT_EQ(view_->currentIndex().row(), 0);
}

TEST_F(Round, RefusesAStepTooFarAndKeepsTheEntry) {
    begin({support::aBatch().stuckOn(core::addDays(today(), -7)).stuck(2)});
    for (int presses = 0; presses < 3; ++presses) press("roundMoreRooted");
    EXPECT_EQ(cell(0, RoundModel::Entry), "+2");
    EXPECT_TRUE(dialog_->findChild<QWidget*>("roundFault")->accessibleName().contains("0 to 2"));
    EXPECT_FALSE(view_->model()->index(0, RoundModel::Meaning).data(RoundModel::isFaultRole).toBool());
}

TEST_F(Round, HasButtonsForAWetFinger) {
    begin(dueBatches(1));
    const auto buttons = dialog_->findChild<QWidget*>("roundButtons")->findChildren<QAbstractButton*>();
    EXPECT_GE(buttons.size(), 12);
    for (const QAbstractButton* each : buttons) {
        EXPECT_GE(each->height(), 32) << each->objectName().toStdString();
        EXPECT_GE(each->width(), 32) << each->objectName().toStdString();
        EXPECT_FALSE(each->toolTip().isEmpty()) << each->objectName().toStdString();
    }
}

TEST_F(Round, PrintsItsRowsAsACheckSheet) {
    begin(dueBatches(3));
    button("roundPrint").click();
    auto* preview = dialog_->findChild<QDialog*>("printPreview");
    ASSERT_TRUE(preview);
    EXPECT_TRUE(preview->windowTitle().contains("Check sheet")) << preview->windowTitle().toStdString();
}

TEST_F(Round, ClosesWithoutAskingWhenNothingWasTyped) {
    begin(dueBatches(1));
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Escape);
    support::settle();
    EXPECT_FALSE(dialog_);
}

TEST_F(Round, JumpsToTheRowOfAScannedCode) {
    begin(dueBatches(5));
    const QString code = cell(3, RoundModel::Code);
    type(code);
    enter();
    EXPECT_EQ(view_->currentIndex().row(), 3);
    EXPECT_EQ(cell(0, RoundModel::Entry), "");
}

TEST_F(Round, GoesToTheButtonWhenRowsWereLeftOut) {
    begin(dueBatches(2));
    enter();
    type("3");
    enter();
    EXPECT_EQ(QApplication::focusWidget()->objectName(), "roundSave");
    ASSERT_TRUE(dialog_);
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Space);
    support::settle();
    EXPECT_EQ(tally(1).rooted + tally(0).rooted, 3);
}

TEST_F(Round, GoesToTheFirstRefusedRowInsteadOfSaving) {
    begin(dueBatches(3));
    type("99");
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Down);
    type("1");
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return, Qt::ControlModifier);
    support::settle();
    ASSERT_TRUE(dialog_);
    EXPECT_EQ(view_->currentIndex().row(), 0);
    EXPECT_EQ(workspace_->logbook().history().size(), 1U);
}

TEST_F(Round, TakesTheDayAtTheTopForEveryCheck) {
    begin(dueBatches(1));
    auto* day = dialog_->findChild<QLineEdit*>("roundDay");
    day->setFocus();
    day->selectAll();
    QTest::keyClicks(day, "-2");
    view_->goToRow(0);
    type("3");
    enter();
    EXPECT_EQ(tally(0).lastCheckedOn, core::addDays(today(), -2));
}

TEST_F(Round, RefusesALookBeforeSticking) {
    begin(dueBatches(1));
    auto* day = dialog_->findChild<QLineEdit*>("roundDay");
    day->setText("-8");
    view_->goToRow(0);
    type("3");
    enter();
    ASSERT_TRUE(dialog_);
    EXPECT_TRUE(view_->model()->index(0, RoundModel::Meaning).data(RoundModel::isFaultRole).toBool());
}

TEST_F(Round, CountsALateRoundFromHowThingsWereOnItsDay) {
    begin({support::aBatch()
               .stuckOn(core::addDays(today(), -14))
               .stuck(24)
               .looked(3, {.rooted = 2})
               .looked(7, {.rooted = 7})});
    dialog_->findChild<QLineEdit*>("roundDay")->setText("-9");  // day 5, between the two looks
    EXPECT_EQ(cell(0, RoundModel::Rooted), "2");
    EXPECT_EQ(cell(0, RoundModel::Undecided), "22 of 24");
    view_->goToRow(0);
    type("5");
    EXPECT_EQ(cell(0, RoundModel::Meaning), "5 rooted (+3), 19 undecided");
}

TEST_F(Round, ClosesABatchThatHasNothingLeftToWaitFor) {
    begin(dueBatches(1));
    type("20.");
    enter();
    const core::BatchLine line = workspace_->logbook().batchLines().front();
    EXPECT_EQ(line.batch.closedOn, today());
    EXPECT_EQ(line.tally.rooted, 20);
    EXPECT_FALSE(line.batch.closeReason.empty());
}

TEST_F(Round, ShowsBatchesThatAreNotDueYetOnWish) {
    std::vector<core::BatchRecord> batches = dueBatches(1);
    batches.push_back(support::aBatch().stuckOn(core::addDays(today(), -1)).stuck(10));
    begin(batches);
    EXPECT_EQ(view_->model()->rowCount(), 1);
    type("3");
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Tab);
    dialog_->findChild<QAbstractButton*>("roundAll")->click();
    EXPECT_EQ(view_->model()->rowCount(), 2);
    const QStringList entries{cell(0, RoundModel::Entry), cell(1, RoundModel::Entry)};
    EXPECT_TRUE(entries.contains("3")) << "what was typed stays";
}

TEST_F(Round, LeavesTheTableByTab) {
    begin(dueBatches(2));
    view_->goToRow(0);
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Tab);
    EXPECT_NE(QApplication::focusWidget(), view_);
    EXPECT_EQ(view_->currentIndex().row(), 0);
}

TEST_F(Round, HoldsUpAsAModel) {
    begin(dueBatches(3));
    const QAbstractItemModelTester tester(view_->model(), QAbstractItemModelTester::FailureReportingMode::Warning);
    type("3");
    enter();
    type("99");
    enter();
    dialog_->findChild<QAbstractButton*>("roundAll")->click();
}

}  // namespace
