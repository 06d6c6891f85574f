// SPDX-License-Identifier: MIT
#include "app/desktop/main_window.h"

#include <QAction>
#include <QApplication>
#include <QComboBox>
#include <QFile>
#include <QLabel>
#include <QLineEdit>
#include <QMenu>
#include <QPushButton>
#include <QTableView>
#include <QTest>
#include <QTreeView>

#include "app/desktop/logbook/logbook_commands.h"
#include "app/desktop/widgets/message_bar.h"
#include "db/actions/check_actions.h"
#include "db/actions/shelf_actions.h"
#include "db/safekeeping/backup.h"
#include "tests/desktop/desk.h"
#include "tests/support/builders.h"

namespace {

class MainWindowOnDesk : public support::Desk {
  protected:
    void open(std::vector<core::BatchRecord> batches = dueBatches(3)) {
        file_ = fileWith("season.strikebook", std::move(batches));
        ASSERT_TRUE(window().commands().openFile(file_));
        support::settle();
    }
    desktop::Outcome renameGrower(const std::string& grower) {
        core::LogbookFacts facts = workspace_->shelves().facts;
        facts.grower = grower;
        return workspace_->run([&](db::Logbook& logbook) { return db::keep(logbook, facts); });
    }
    [[nodiscard]] QString barText() { return window().bar().sentence(); }
    [[nodiscard]] std::string grower() { return workspace_->logbook().shelves().facts.grower; }

    /// As fileWith() wrote it.
    [[nodiscard]] static std::string recordsGrower() { return support::someShelves().facts.grower; }

    QString file_;
};

TEST_F(MainWindowOnDesk, BeginsWithThreeChoicesAndMakesANewLogbook) {
    show();
    for (const char* choice : {"chooseSample", "chooseNew", "chooseTables"})
        EXPECT_TRUE(find<QAbstractButton>(choice)->isVisible());
    QTest::mouseClick(find<QAbstractButton>("chooseNew"), Qt::LeftButton);
    find<QLineEdit>("logbookName")->setText("Lower garden");
    find<QLineEdit>("logbookGrower")->setText("HB");
    find<QLineEdit>("logbookFile")->setText(path("lower.strikebook"));
    QTest::mouseClick(find<QAbstractButton>("logbookDone"), Qt::LeftButton);
    support::settle();
    ASSERT_TRUE(workspace_->hasLogbook());
    EXPECT_TRUE(QFile::exists(path("lower.strikebook")));
    EXPECT_TRUE(window().windowTitle().startsWith("Lower garden"));
    EXPECT_TRUE(find<QLabel>("benchEmpty")->isVisible()) << "an empty bench says what it is for";
    EXPECT_EQ(memory_->lastLogbook(), path("lower.strikebook"));
    EXPECT_EQ(memory_->grower(), "HB");
}

TEST_F(MainWindowOnDesk, MarksWhatIsWrongWithANewLogbookUnderItsField) {
    show();
    window().commands().makeNew();
    find<QLineEdit>("logbookName")->setText(" ");
    find<QLineEdit>("logbookRootLength")->setText("ten");
    find<QLineEdit>("logbookFile")->setText(path("no such folder/a.strikebook"));
    QPushButton* done = find<QPushButton>("logbookDone");
    done->click();
    EXPECT_TRUE(find<QLineEdit>("logbookRootLength")->accessibleDescription().contains("ten"));
    find<QLineEdit>("logbookRootLength")->setText("10");
    done->click();
    EXPECT_FALSE(find<QLineEdit>("logbookName")->accessibleDescription().isEmpty());
    find<QLineEdit>("logbookName")->setText("Named");
    done->click();
    EXPECT_FALSE(find<QLineEdit>("logbookFile")->accessibleDescription().isEmpty());
    EXPECT_FALSE(workspace_->hasLogbook());
}

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
    EXPECT_EQ(grower(), recordsGrower());
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
    EXPECT_EQ(grower(), recordsGrower());
    EXPECT_TRUE(action("editRedo")->isEnabled());
}

TEST_F(MainWindowOnDesk, TakesBackWithTheButtonInTheBar) {
    open();
    show();
    ASSERT_TRUE(renameGrower("Rose").isDone);
    QTest::mouseClick(find<QPushButton>("messageButton"), Qt::LeftButton);
    EXPECT_EQ(grower(), recordsGrower());
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

TEST_F(MainWindowOnDesk, SaysWhyADamagedLogbookWasNotOpenedAndOffersItsBackup) {
    file_ = fileWith("season.strikebook", dueBatches(2));
    {
        db::Logbook logbook =
            db::Logbook::open(file_.toStdString(), {.clock = [] { return std::chrono::sys_seconds{}; }, .author = {}});
        ASSERT_FALSE(db::backUpAutomatically(logbook, true).empty());
    }
    QFile damaged(file_);
    ASSERT_TRUE(damaged.open(QIODevice::WriteOnly));
    damaged.write("this is no logbook at all, only some text that somebody has saved over it");
    damaged.close();
    show();
    EXPECT_FALSE(window().commands().openFile(file_));
    EXPECT_TRUE(find<QWidget>("openingFault")->isVisible());
    EXPECT_FALSE(find<QWidget>("openingFault")->accessibleName().isEmpty());
    ASSERT_TRUE(find<QPushButton>("openBackup")->isVisible());
    prompts_.willConfirm(true);
    find<QPushButton>("openBackup")->click();
    ASSERT_TRUE(workspace_->hasLogbook());
    EXPECT_EQ(workspace_->logbook().batchLines().size(), 2U);
}

TEST_F(MainWindowOnDesk, KeepsTheOpenLogbookWhenAnotherCannotBeOpened) {
    open();
    QFile text(path("letter.txt"));
    ASSERT_TRUE(text.open(QIODevice::WriteOnly));
    text.write("Dear Ann");
    text.close();
    prompts_.willPickFileToOpen(path("letter.txt"));
    action("fileOpen")->trigger();
    EXPECT_FALSE(barText().isEmpty());
    EXPECT_EQ(QString::fromStdString(workspace_->logbook().file().string()), file_);
}

TEST_F(MainWindowOnDesk, BacksUpCopiesExportsAndBringsBackIn) {
    open(dueBatches(4));
    show();
    EXPECT_EQ(db::backupsOf(file_.toStdString()).size(), 1U) << "opening makes the day's backup";
    action("fileBackUp")->trigger();
    EXPECT_EQ(db::backupsOf(file_.toStdString()).size(), 2U);
    prompts_.willPickFileToSave(path("copy.strikebook"));
    action("fileCopy")->trigger();
    EXPECT_TRUE(QFile::exists(path("copy.strikebook")));
    prompts_.willPickFileToSave(path("tables"));
    action("fileExport")->trigger();
    EXPECT_TRUE(QFile::exists(path("tables/batches.csv")));

    action("fileClose")->trigger();
    EXPECT_FALSE(workspace_->hasLogbook());
    EXPECT_EQ(memory_->lastLogbook(), "");
    prompts_.willPickFolder(path("tables"));
    prompts_.willPickFileToSave(path("again.strikebook"));
    action("fileImport")->trigger();
    auto* bringIn = find<QPushButton>("importBringIn");
    ASSERT_TRUE(QTest::qWaitFor([&] { return bringIn->isEnabled(); }));
    bringIn->click();
    ASSERT_TRUE(workspace_->hasLogbook());
    EXPECT_EQ(workspace_->logbook().batchLines().size(), 4U);
}

TEST_F(MainWindowOnDesk, ListsTheFaultsOfTablesAndWritesNothing) {
    open(dueBatches(1));
    show();
    ASSERT_TRUE(QDir().mkpath(path("tables")));
    QFile batches(path("tables/batches.csv"));
    ASSERT_TRUE(batches.open(QIODevice::WriteOnly));
    batches.write("batch,stuck_on,species,method,stuck\nA1,2026-02-31,Hebe albicans,media tray,-5\n");
    batches.close();
    prompts_.willPickFolder(path("tables"));
    action("fileImport")->trigger();
    auto* faults = find<QTableView>("importFaults");
    ASSERT_TRUE(QTest::qWaitFor([&] { return faults->isVisible(); }));
    EXPECT_GE(faults->model()->rowCount(), 2);
    EXPECT_FALSE(find<QPushButton>("importBringIn")->isVisible());
    EXPECT_EQ(workspace_->logbook().history().size(), 1U);
}

TEST_F(MainWindowOnDesk, RestoresABackupAfterAsking) {
    open(dueBatches(2));
    show();
    ASSERT_TRUE(renameGrower("Rose").isDone);
    prompts_.willConfirm(true);
    action("fileRestore")->trigger();
    find<QPushButton>("restoreButton")->click();
    support::settle();
    ASSERT_TRUE(workspace_->hasLogbook());
    EXPECT_EQ(grower(), recordsGrower());
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

TEST_F(MainWindowOnDesk, ListsItsKeys) {
    open();
    show();
    action("helpKeys")->trigger();
    const auto* keys = find<QTableView>("keyboardTable");
    QStringList all;
    for (int row = 0; row < keys->model()->rowCount(); ++row) all << keys->model()->index(row, 0).data().toString();
    for (const char* key : {"Ctrl+1", "Ctrl+R", "Ctrl+Z", "F9"}) EXPECT_TRUE(all.join(' ').contains(key)) << key;
}

}  // namespace
