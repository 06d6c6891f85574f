// SPDX-License-Identifier: MIT
#include "app/desktop/positions/position_look_dialog.h"

#include <QApplication>
#include <QCheckBox>
#include <QComboBox>
#include <QElapsedTimer>
#include <QLabel>
#include <QLineEdit>
#include <QMenu>
#include <QPushButton>
#include <algorithm>

#include "app/desktop/positions/place_batch_dialog.h"
#include "app/desktop/positions/position_look_model.h"
#include "app/desktop/positions/position_map_model.h"
#include "app/desktop/positions/position_mark_view.h"
#include "app/desktop/widgets/fault_label.h"
#include "tests/desktop/pages/desk.h"

namespace {

using core::Outcome;
using desktop::FaultLabel;
using desktop::PositionLookDialog;
using desktop::PositionMarkView;
using pages::named;
using pages::press;

class HoleByHole : public pages::Desk {
  protected:
    /// A batch with `count` cuttings from A1 on in the north tub, which has 6 rows of 10.
    static core::BatchRecord aLid(int count, const std::string& positions) {
        core::BatchRecord record = support::aBatch().stuck(count).code("B260001C");
        record.batch.positions = positions;
        return record;
    }

    void open(const core::Records& records, const std::string& code = "B260001C") {
        fill(records);
        dialog_ = std::make_unique<PositionLookDialog>(context(), logbook().batchWithCode(code));
        pages::show(*dialog_);
    }
    void openStation(const core::Records& records) {
        fill(records);
        dialog_ = std::make_unique<PositionLookDialog>(context(), support::tubNorth);
        pages::show(*dialog_);
    }

    PositionMarkView& map() { return named<PositionMarkView>(*dialog_, "positionMap"); }
    QString counts() { return named<QLabel>(*dialog_, "lookCounts").text(); }
    QString fault() { return named<FaultLabel>(*dialog_, "lookFault").fault(); }
    QString at(const char* position) {
        return map().map().indexOf(*core::positionNamed(position)).data(Qt::AccessibleTextRole).toString();
    }
    /// Every letter is one key.
    void keys(const QString& letters) {
        for (const QChar letter : letters) {
            pages::type(letter);
            ++keystrokes_;
        }
    }
    void key(Qt::Key which, Qt::KeyboardModifiers with = Qt::NoModifier) {
        press(which, with);
        ++keystrokes_;
    }
    QPoint middleOf(const char* position) {
        return map().visualRect(map().map().indexOf(*core::positionNamed(position))).center();
    }
    void click(const char* position, Qt::KeyboardModifiers with = Qt::NoModifier) {
        QTest::mouseClick(map().viewport(), Qt::LeftButton, with, middleOf(position));
    }
    void drag(const char* from, const char* to) {
        QTest::mousePress(map().viewport(), Qt::LeftButton, {}, middleOf(from));
        QMouseEvent move(QEvent::MouseMove, middleOf(to), map().viewport()->mapToGlobal(middleOf(to)), Qt::NoButton,
                         Qt::LeftButton, {});
        QApplication::sendEvent(map().viewport(), &move);
        QTest::mouseRelease(map().viewport(), Qt::LeftButton, {}, middleOf(to));
    }

    std::unique_ptr<PositionLookDialog> dialog_;
    int keystrokes_{};
};

TEST_F(HoleByHole, TakesALidOfSixtyWithOneKeyAPositionAndSavesItAsOneCheck) {
    open(support::recordsOf({aLid(60, "A1-F10")}));
    // Every row: seven rooted, one rotted, two passed over.
    for (int row = 0; row < 6; ++row) {
        keys(QStringLiteral("rrrrrrrt"));
        key(Qt::Key_Right);
        if (row < 5) {
            key(Qt::Key_Down);
            key(Qt::Key_Home);
        }
    }
    EXPECT_EQ(counts(), QStringLiteral("42 rooted (+42), 6 lost (+6), 12 undecided"));
    key(Qt::Key_Return);
    EXPECT_FALSE(dialog_->isVisible());
    EXPECT_EQ(keystrokes_, 65);
    RecordProperty("keystrokes", keystrokes_);
    const core::BatchRecord after = batch("B260001C");
    ASSERT_EQ(after.checks.size(), 1u);
    EXPECT_EQ(after.checks.front().checkedOn, support::today());
    EXPECT_EQ(after.checks.front().rooted, 42);
    EXPECT_EQ(after.checks.front().losses, (std::vector<core::Loss>{{.cause = support::rotted, .count = 6}}));
    EXPECT_EQ(after.checks.front().findings.size(), 48u);
}

TEST_F(HoleByHole, TakesALidOfSixtyThatAllRootedWithEightKeys) {
    open(support::recordsOf({aLid(60, "A1-F10")}));
    key(Qt::Key_End, Qt::ShiftModifier);
    for (int row = 1; row < 6; ++row) key(Qt::Key_Down, Qt::ShiftModifier);
    keys(QStringLiteral("r"));
    key(Qt::Key_Return);
    EXPECT_EQ(keystrokes_, 8);
    EXPECT_EQ(batch("B260001C").checks.front().rooted, 60);
}

TEST_F(HoleByHole, IsOneUndoAndLeavesEverythingAsItWasOnEscape) {
    open(support::recordsOf({aLid(6, "A1-A6")}));
    keys(QStringLiteral("rrt"));
    press(Qt::Key_Escape);
    EXPECT_FALSE(dialog_->isVisible());
    EXPECT_TRUE(batch("B260001C").checks.empty());
    // What was marked stands there again, and can be given up.
    dialog_ = std::make_unique<PositionLookDialog>(context(), logbook().batchWithCode("B260001C"));
    pages::show(*dialog_);
    EXPECT_EQ(at("A3"), QStringLiteral("A3, lost (rotted)"));
    named<QPushButton>(*dialog_, "lookSave").click();
    EXPECT_EQ(batch("B260001C").checks.size(), 1u);
    EXPECT_EQ(workspace_.wordsToUndo(), QStringLiteral("look hole by hole at B260001C"));
    EXPECT_TRUE(workspace_.undo());
    EXPECT_TRUE(batch("B260001C").checks.empty());
    EXPECT_TRUE(workspace_.redo());
    EXPECT_EQ(batch("B260001C").checks.front().findings.size(), 3u);
}

TEST_F(HoleByHole, StepsOverWhatCantBeMarkedAndRepeatsWithSpace) {
    core::Records records = support::recordsOf({aLid(4, "A1, A3, A5-A6")});
    for (core::Station& station : records.shelves.stations) station.blocked = "A2";
    records.batches.front().checks = {support::aCheck(core::addDays(support::stickingDay(), 7), {.rooted = 1})};
    records.batches.front().checks.front().batch = records.batches.front().batch.id;
    records.batches.front().checks.front().findings = {{.position = {0, 2}, .outcome = Outcome::Rooted, .cause = {}}};
    open(records);
    EXPECT_EQ(at("A2"), QStringLiteral("A2, blocked"));
    EXPECT_EQ(map().current(), (core::Position{0, 0}));
    keys(QStringLiteral("w"));
    EXPECT_EQ(map().current(), (core::Position{0, 4}));  // A2 is blocked, A3 decided, A4 nobody's
    key(Qt::Key_Space);
    EXPECT_EQ(at("A5"), QStringLiteral("A5, withdrawn"));
    key(Qt::Key_Home);
    key(Qt::Key_Right, Qt::ControlModifier);
    EXPECT_EQ(map().current(), (core::Position{0, 5}));
    // What another day decided stays.
    map().goTo({0, 2});
    keys(QStringLiteral("l"));
    EXPECT_EQ(at("A3"), QStringLiteral("A3, rooted"));
}

TEST_F(HoleByHole, FollowsAHandThatGoesBackAndForth) {
    open(support::recordsOf({aLid(20, "A1-B10")}));
    named<QCheckBox>(*dialog_, "lookSnake").click();
    map().setFocus();
    map().goTo({0, 8});
    keys(QStringLiteral("rrr"));
    EXPECT_EQ(at("B10"), QStringLiteral("B10, rooted"));
    EXPECT_EQ(map().current(), (core::Position{1, 8}));
}

TEST_F(HoleByHole, JumpsToAPositionThatIsTypedAndSaysWhatIsAllowed) {
    open(support::recordsOf({aLid(60, "A1-F10")}));
    EXPECT_TRUE(map().hasFocus());
    keys(QStringLiteral("/"));
    auto& jump = named<QLineEdit>(*dialog_, "lookJump");
    EXPECT_TRUE(jump.hasFocus());
    pages::type(QStringLiteral("g7"));
    press(Qt::Key_Return);
    EXPECT_TRUE(dialog_->isVisible());
    EXPECT_TRUE(jump.hasFocus());
    EXPECT_EQ(jump.text(), QStringLiteral("g7"));
    jump.selectAll();
    pages::type(QStringLiteral("c7"));
    press(Qt::Key_Return);
    EXPECT_TRUE(map().hasFocus());
    EXPECT_EQ(map().current(), (core::Position{2, 6}));
}

TEST_F(HoleByHole, ClicksRoundTheStatesAndPaintsTheFirstOverOthers) {
    open(support::recordsOf({aLid(20, "A1-B10")}));
    click("A1");
    EXPECT_EQ(at("A1"), QStringLiteral("A1, rooted"));
    click("A1");
    EXPECT_EQ(at("A1"), QStringLiteral("A1, lost, cause not known"));
    click("A1");
    EXPECT_EQ(at("A1"), QStringLiteral("A1, undecided"));
    drag("A1", "A8");
    EXPECT_EQ(counts(), QStringLiteral("8 rooted (+8), 0 lost, 12 undecided"));
    // The whole stroke is one step to take back.
    named<QPushButton>(*dialog_, "lookTakeBack").click();
    EXPECT_EQ(counts(), QStringLiteral("0 rooted, 0 lost, 20 undecided"));
}

TEST_F(HoleByHole, MarksABlockByButtonAndByMenu) {
    open(support::recordsOf({aLid(20, "A1-B10")}));
    click("A1");
    click("B3", Qt::ShiftModifier);
    auto& button = named<QPushButton>(*dialog_, "mark_D");
    EXPECT_GE(button.height(), 32);
    button.click();
    EXPECT_EQ(counts(), QStringLiteral("0 rooted, 6 lost (+6), 14 undecided"));
    map().goTo({0, 4});
    QContextMenuEvent event(QContextMenuEvent::Mouse, middleOf("A5"), map().viewport()->mapToGlobal(middleOf("A5")));
    QApplication::sendEvent(map().viewport(), &event);
    auto* menu = map().findChild<QMenu*>(QStringLiteral("markMenu"));
    ASSERT_NE(menu, nullptr);
    const auto actions = menu->actions();
    const auto wanted =
        std::ranges::find_if(actions, [](QAction* action) { return action->text().startsWith("pests"); });
    ASSERT_NE(wanted, actions.end());
    (*wanted)->trigger();
    EXPECT_EQ(at("A5"), QStringLiteral("A5, lost (pests)"));
}

TEST_F(HoleByHole, ShowsTheLettersInForceOnItsButtons) {
    open(support::recordsOf({aLid(6, "A1-A6")}));
    EXPECT_TRUE(named<QPushButton>(*dialog_, "mark_R").text().contains(QStringLiteral("rooted")));
    EXPECT_TRUE(named<QPushButton>(*dialog_, "mark_T").text().contains(QStringLiteral("rotted")));
    for (const auto* button : dialog_->findChildren<QPushButton*>())
        EXPECT_FALSE(button->text().isEmpty() && button->accessibleName().isEmpty())
            << button->objectName().toStdString();
}

TEST_F(HoleByHole, RefusesInPlaceWhatTheRulesRefuseAndKeepsTheMarks) {
    core::Records records = support::recordsOf({aLid(6, "A1-A6")});
    records.batches.front().checks = {support::aCheck(core::addDays(support::stickingDay(), 7), {.rooted = 4})};
    records.batches.front().checks.front().batch = records.batches.front().batch.id;
    open(records);
    EXPECT_TRUE(named<QLabel>(*dialog_, "lookReminder").text().contains(QStringLiteral("4 rooted")));
    keys(QStringLiteral("rrr"));
    EXPECT_TRUE(fault().contains(QStringLiteral("0 to 2 is allowed"))) << fault().toStdString();
    key(Qt::Key_Return);
    EXPECT_TRUE(dialog_->isVisible());
    EXPECT_TRUE(fault().startsWith(QStringLiteral("Nothing is saved yet.")));
    EXPECT_EQ(batch("B260001C").checks.size(), 1u);
    // Three of these were counted before.
    key(Qt::Key_Home);
    keys(QStringLiteral("uuu"));
    named<QCheckBox>(*dialog_, "lookWasCounted").click();
    map().setFocus();
    key(Qt::Key_Home);
    keys(QStringLiteral("rrrrr"));
    EXPECT_FALSE(fault().isEmpty());  // the fifth was not
    EXPECT_EQ(counts(), QStringLiteral("4 rooted, 0 lost, 2 undecided"));
    key(Qt::Key_Return);
    EXPECT_FALSE(dialog_->isVisible());
    ASSERT_EQ(batch("B260001C").checks.size(), 2u);
    EXPECT_EQ(batch("B260001C").checks.front().findings.size(), 4u);
    EXPECT_TRUE(workspace_.undo());
    EXPECT_EQ(batch("B260001C").checks.size(), 1u);
    EXPECT_TRUE(batch("B260001C").checks.front().findings.empty());
}

TEST_F(HoleByHole, AmendsTheCheckOfTheDay) {
    core::Records records = support::recordsOf({aLid(6, "A1-A6")});
    records.batches.front().checks = {support::aCheck(support::today(), {.rooted = 2})};
    records.batches.front().checks.front().batch = records.batches.front().batch.id;
    records.batches.front().checks.front().note = "warm";
    open(records);
    EXPECT_EQ(named<QLineEdit>(*dialog_, "lookNote").text(), QStringLiteral("warm"));
    keys(QStringLiteral("rrr"));
    key(Qt::Key_Return);
    const core::BatchRecord after = batch("B260001C");
    ASSERT_EQ(after.checks.size(), 1u);
    EXPECT_EQ(after.checks.front().rooted, 3);
    EXPECT_EQ(after.checks.front().note, "warm");
}

TEST_F(HoleByHole, LooksAtAWholeStationAndWritesEachBatchItsOwnCheckInOneStep) {
    core::BatchRecord other = support::aBatch().stuck(5).code("B260002D");
    other.batch.positions = "B1-B5";
    openStation(support::recordsOf({aLid(5, "A1-A5"), other}));
    keys(QStringLiteral("rr"));
    map().goTo({1, 0});
    keys(QStringLiteral("t"));
    EXPECT_EQ(counts(), QStringLiteral("2 rooted (+2), 1 lost (+1), 7 undecided"));
    key(Qt::Key_Return);
    EXPECT_EQ(batch("B260001C").checks.front().rooted, 2);
    EXPECT_EQ(batch("B260002D").checks.front().lost(), 1);
    EXPECT_TRUE(workspace_.undo());
    EXPECT_TRUE(batch("B260001C").checks.empty());
    EXPECT_TRUE(batch("B260002D").checks.empty());
}

TEST_F(HoleByHole, DimsWhatStandsBesideTheBatchAndMarksItNot) {
    core::BatchRecord other = support::aBatch().stuck(5).code("B260002D");
    other.batch.positions = "B1-B5";
    open(support::recordsOf({aLid(5, "A1-A5"), other}));
    map().goTo({1, 0});
    keys(QStringLiteral("r"));
    EXPECT_EQ(at("B1"), QStringLiteral("B1, undecided, of B260002D"));
    EXPECT_TRUE(map().map().placeAt({1, 0}).isDimmed);
}

TEST_F(HoleByHole, GivesABatchWithoutPositionsFreeOnesFirst) {
    core::BatchRecord other = support::aBatch().stuck(3).code("B260002D");
    other.batch.positions = "A1-A3";
    open(support::recordsOf({aLid(4, ""), other}));
    EXPECT_TRUE(named<QLabel>(*dialog_, "lookWhyNot").isVisible());
    dialog_->beginWithPlaces();
    auto* place = pages::opened<desktop::PlaceBatchDialog>(*dialog_);
    ASSERT_NE(place, nullptr);
    pages::show(*place);
    auto& typed = named<QLineEdit>(*place, "placeTyped");
    EXPECT_EQ(typed.text(), QStringLiteral("A4-A7"));
    typed.setText({});
    typed.setFocus();
    pages::type(QStringLiteral("A3-A6"));
    EXPECT_TRUE(named<FaultLabel>(*place, "placeFault").fault().contains(QStringLiteral("B260002D")));
    named<QPushButton>(*place, "placeKeep").click();
    EXPECT_TRUE(place->isVisible());
    typed.setText({});
    pages::type(QStringLiteral("B1-C2"));
    named<QPushButton>(*place, "placeKeep").click();
    EXPECT_EQ(batch("B260001C").batch.positions, "B1-B2, C1-C2");
    EXPECT_TRUE(map().isVisible());
    EXPECT_EQ(map().current(), (core::Position{1, 0}));
    EXPECT_TRUE(workspace_.undo());
    EXPECT_EQ(batch("B260001C").batch.positions, "");
}

TEST_F(HoleByHole, OpensFourHundredPositionsWithoutAWait) {
    core::Records records = support::recordsOf({aLid(400, "A1-P25")});
    for (core::Station& station : records.shelves.stations) station.rows = 16, station.columns = 25;
    fill(records);
    // The best of three: others may be at work on the machine.
    qint64 best = 1'000'000;
    for (int attempt = 0; attempt < 3; ++attempt) {
        QElapsedTimer timer;
        timer.start();
        PositionLookDialog dialog(context(), logbook().batchWithCode("B260001C"));
        dialog.show();
        (void)dialog.grab();
        best = std::min(best, timer.elapsed());
    }
    RecordProperty("milliseconds", static_cast<int>(best));
    EXPECT_LT(best, 100);
}

}  // namespace
