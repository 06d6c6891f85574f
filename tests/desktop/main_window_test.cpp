// SPDX-License-Identifier: MIT
#include "app/desktop/main_window.h"

#include <QAction>
#include <QApplication>
#include <QLabel>
#include <QPushButton>
#include <QTableView>
#include <QTest>
#include <QTreeView>

#include "app/desktop/logbook/logbook_commands.h"
#include "app/desktop/widgets/message_bar.h"
#include "db/actions/check_actions.h"
#include "tests/desktop/desk.h"
#include "tests/support/builders.h"

namespace {

using MainWindowOnDesk = support::Desk;

TEST_F(MainWindowOnDesk, ShowsWhatIsDueOnTheBench) {
    open(dueBatches(3));
    show();
    EXPECT_EQ(find<QLabel>("benchSentence")->text(), "3 batches due for a look today.");
    const QAbstractItemModel* due = find<QTreeView>("benchDue")->model();
    ASSERT_EQ(due->rowCount(), 1);
    EXPECT_EQ(due->rowCount(due->index(0, 0)), 3);
    EXPECT_EQ(find<QLabel>("benchDay")->text(), "30 March 2026");
}

TEST_F(MainWindowOnDesk, TakesBackAndDoesAgainFromTheMenuInWords) {
    open();
    show();
    ASSERT_TRUE(renameGrower("Rose").isDone);
    EXPECT_TRUE(action("editUndo")->text().startsWith("&Undo "));
    EXPECT_GT(action("editUndo")->text().size(), 7) << "the menu says what it would take back";
    EXPECT_TRUE(barText().startsWith("Saved: "));
    EXPECT_EQ(find<QLabel>("savedMark")->text(), "Saved 10:42");
    action("editUndo")->trigger();
    EXPECT_EQ(grower(), growerOnFile());
    EXPECT_TRUE(barText().startsWith("Taken back: "));
    EXPECT_TRUE(action("editRedo")->isEnabled());
    action("editRedo")->trigger();
    EXPECT_EQ(grower(), "Rose");
}

TEST_F(MainWindowOnDesk, TakesBackAfterARestartToo) {
    open();
    ASSERT_TRUE(renameGrower("Rose").isDone);
    startAgain();
    ASSERT_TRUE(window().commands().openFile(file_));
    show();
    ASSERT_TRUE(action("editUndo")->isEnabled());
    action("editUndo")->trigger();
    EXPECT_EQ(grower(), growerOnFile());
    EXPECT_TRUE(action("editRedo")->isEnabled());
}

TEST_F(MainWindowOnDesk, TakesBackWithTheButtonInTheBar) {
    open();
    show();
    ASSERT_TRUE(renameGrower("Rose").isDone);
    QTest::mouseClick(find<QPushButton>("messageButton"), Qt::LeftButton);
    EXPECT_EQ(grower(), growerOnFile());
}

TEST_F(MainWindowOnDesk, KeepsTheUndoButtonBesideWhatIsSaidAfterSaving) {
    open();
    show();
    ASSERT_TRUE(renameGrower("Rose").isDone);
    window().say("Copied 3 rows.");
    EXPECT_TRUE(barText().startsWith("Copied 3 rows. Saved: "));
    QTest::mouseClick(find<QPushButton>("messageButton"), Qt::LeftButton);
    EXPECT_EQ(grower(), growerOnFile());
    EXPECT_TRUE(barText().startsWith("Taken back: "));
}

TEST_F(MainWindowOnDesk, ListsTheHistoryWithWhatWasTakenBack) {
    open();
    show();
    ASSERT_TRUE(renameGrower("Rose").isDone);
    window().showPage(1);
    const QAbstractItemModel* history = find<QTableView>("historyTable")->model();
    EXPECT_EQ(history->rowCount(), 2);
    find<QPushButton>("historyUndo")->click();
    EXPECT_EQ(history->rowCount(), 3);
    EXPECT_TRUE(history->index(0, 2).data().toString().startsWith("Taken back: "));
    EXPECT_TRUE(history->index(1, 3).data().toString().startsWith("taken back"));
    EXPECT_TRUE(history->index(1, 2).data(Qt::FontRole).value<QFont>().strikeOut());
    find<QPushButton>("historyRedo")->click();
    EXPECT_EQ(grower(), "Rose");
}

TEST_F(MainWindowOnDesk, TellsASecondWindowThatTheFirstOneWrites) {
    file_ = fileWith("season.strikebook", dueBatches(2));
    auto first = std::make_unique<db::Logbook>(db::Logbook::open(
        file_.toStdString(), {.clock = [] { return std::chrono::sys_seconds{}; }, .author = {}, .asWindow = true}));
    ASSERT_TRUE(window().commands().openFile(file_));
    show();
    EXPECT_TRUE(barText().contains("another window")) << barText().toStdString();
    EXPECT_TRUE(window().windowTitle().contains("read only"));
    EXPECT_FALSE(action("task_round")->isEnabled());
    EXPECT_FALSE(find<QPushButton>("benchRound")->isEnabled());
    EXPECT_FALSE(action("editUndo")->isEnabled());
    first.reset();
    QTest::mouseClick(find<QPushButton>("messageButton"), Qt::LeftButton);
    EXPECT_FALSE(workspace_->isReadOnly()) << "after the first has closed, trying again opens it for writing";
    EXPECT_TRUE(action("task_round")->isEnabled());
}

TEST_F(MainWindowOnDesk, SeesWhatAnotherProcessChanged) {
    open(dueBatches(2));
    show();
    {
        db::Logbook other = db::Logbook::open(file_.toStdString(), {.clock = workspace_->clock(), .author = {}});
        core::Check check = support::aCheck(today(), {.rooted = 4});
        check.batch = other.batchLines().front().batch.id;
        check.id = {};
        ASSERT_TRUE(db::recordChecks(other, {{.check = check, .closeReason = {}}}, today()));
    }
    workspace_->lookOutside();
    EXPECT_EQ(find<QLabel>("benchSentence")->text(), "1 batch due for a look today.");
    EXPECT_TRUE(barText().contains("newest"));
}

TEST_F(MainWindowOnDesk, GreysWhatCannotBeDoneWithoutALogbook) {
    show();
    for (const char* name : {"fileCopy", "fileExport", "fileBackUp", "fileRestore", "fileClose", "editUndo", "editRedo",
                             "task_round", "filePrint"})
        EXPECT_FALSE(action(name)->isEnabled()) << name;
    for (const char* name : {"fileNew", "fileOpen", "fileImport", "fileQuit"})
        EXPECT_TRUE(action(name)->isEnabled()) << name;
}

TEST_F(MainWindowOnDesk, ChangesItsTextSizeAndLook) {
    open();
    show();
    const double before = QApplication::font().pointSizeF();
    action("viewLarger")->trigger();
    support::settle();
    EXPECT_NEAR(QApplication::font().pointSizeF(), before * 1.1, 0.01);
    EXPECT_EQ(memory_->textPercent(), 110);
    EXPECT_NEAR(find<QLabel>("benchDay")->font().pointSizeF(), before * 1.1 * 1.4, 0.01) << "the headline grows too";
    action("viewNormal")->trigger();
    EXPECT_NEAR(QApplication::font().pointSizeF(), before, 0.01);
    window().say("Something was done.");
    action("look_dark")->trigger();
    support::settle();
    EXPECT_TRUE(desktop::isDark(window().palette()));
    EXPECT_EQ(window().bar().palette().color(QPalette::Window), desktop::noteBackground(window().palette()))
        << "the bar that stood there follows";
    EXPECT_EQ(memory_->theme(), desktop::Theme::Dark);
    action("look_light")->trigger();
    support::settle();
    EXPECT_FALSE(desktop::isDark(window().palette()));
}

TEST_F(MainWindowOnDesk, NamesEveryControl) {
    open();
    show();
    window().showPage(1);
    window().startTask("round");
    for (const QWidget* widget : window().findChildren<QWidget*>()) {
        if (widget->focusPolicy() == Qt::NoFocus || widget->objectName().startsWith("qt_") || !widget->isVisible())
            continue;
        if (qobject_cast<const QLabel*>(widget)) continue;  // its text is its name
        const auto labels = window().findChildren<QLabel*>();
        const bool hasBuddy =
            std::ranges::any_of(labels, [&](const QLabel* label) { return label->buddy() == widget; });
        const auto* button = qobject_cast<const QAbstractButton*>(widget);
        EXPECT_TRUE(hasBuddy || !widget->accessibleName().isEmpty() || (button && !button->text().isEmpty()) ||
                    widget->focusProxy())
            << widget->metaObject()->className() << ' ' << widget->objectName().toStdString();
    }
}

}  // namespace
