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

class Round : public support::Desk {
  protected:
    void begin(std::vector<core::BatchRecord> batches) {
        ASSERT_TRUE(window().commands().openFile(fileWith("round.strikebook", std::move(batches))));
        show();
        QTest::keyClick(&window(), Qt::Key_R, Qt::ControlModifier);
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

using desktop::RoundModel;

TEST_F(Round, OfTwentyBatchesTakesAtMostFiveKeysEach) {
    begin(dueBatches(20));
    for (int number = 0; number < 20; ++number) {
        type("3-1r");
        enter();
    }
    support::settle();
    std::printf("keystrokes for a round of 20 batches: %d\n", keys_);
    RecordProperty("keystrokes", keys_);
    EXPECT_LE(keys_, 5 * 20);
    EXPECT_FALSE(dialog_) << "the round is saved and closed";
    for (int number = 0; number < 20; ++number) {
        EXPECT_EQ(tally(number).rooted, 3);
        EXPECT_EQ(tally(number).lost, 1);
        EXPECT_EQ(tally(number).undecided(), 20);
        EXPECT_EQ(tally(number).lastCheckedOn, today());
    }
    const auto record = workspace_->logbook().batch(workspace_->logbook().batchLines().front().batch.id);
    EXPECT_EQ(record->checks.front().losses.front().cause,
              std::ranges::find(workspace_->shelves().lossCauses, 'r', &core::LossCause::key)->id);
}

TEST_F(Round, IsOneStepOfUndo) {
    begin(dueBatches(3));
    for (int number = 0; number < 3; ++number) {
        type("*");
        enter();
    }
    EXPECT_EQ(workspace_->logbook().history().size(), 2U);
    action("editUndo")->trigger();
    for (int number = 0; number < 3; ++number) EXPECT_FALSE(tally(number).lastCheckedOn);
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
    EXPECT_EQ(count(), "Not saved yet: 1 of 3 checks.");
    EXPECT_FALSE(tally(0).lastCheckedOn);
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return, Qt::ControlModifier);
    support::settle();
    EXPECT_FALSE(dialog_);
    EXPECT_EQ(tally(0).rooted, 3);
    EXPECT_FALSE(tally(1).lastCheckedOn) << "a blank row stays due";
}

TEST_F(Round, IsForgottenByEscOnlyAfterAsking) {
    begin(dueBatches(3));
    type("3");
    enter();
    type("4");
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Escape);  // the innermost thing: the open cell
    support::settle();
    EXPECT_EQ(cell(1, RoundModel::Entry), "");
    prompts_.willConfirm(false);
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Escape);
    ASSERT_TRUE(dialog_ && dialog_->isVisible());
    prompts_.willConfirm(true);
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Escape);
    support::settle();
    EXPECT_FALSE(dialog_);
    EXPECT_EQ(workspace_->logbook().history().size(), 1U) << "everything is as it was";
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
    EXPECT_EQ(cell(0, RoundModel::SoFar), "2 of 24 rooted, 22 undecided");
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
