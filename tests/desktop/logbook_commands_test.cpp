// SPDX-License-Identifier: MIT
#include "app/desktop/logbook/logbook_commands.h"

#include <QAction>
#include <QComboBox>
#include <QDir>
#include <QFile>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QTableView>
#include <QTest>

#include "app/desktop/background/waiting_dialog.h"
#include "core/demo/demo_season.h"
#include "db/actions/records_actions.h"
#include "db/exchange/export_folder.h"
#include "db/safekeeping/backup.h"
#include "db/writer.h"
#include "tests/desktop/desk.h"
#include "tests/support/builders.h"

namespace {

class LogbookCommands : public support::Desk {
  protected:
    [[nodiscard]] std::size_t backups() const { return db::backupsOf(file_.toStdString()).size(); }
    [[nodiscard]] QStringList namesThere() const {
        return QDir(folder_.path()).entryList(QDir::AllEntries | QDir::Hidden | QDir::NoDotAndDotDot);
    }
    [[nodiscard]] bool isWaiting() { return window().findChild<desktop::WaitingDialog*>() != nullptr; }
};

TEST_F(LogbookCommands, BeginsWithThreeChoicesAndMakesANewLogbook) {
    show();
    for (const char* choice : {"chooseSample", "chooseNew", "chooseTables"})
        EXPECT_TRUE(find<QAbstractButton>(choice)->isVisible());
    QTest::mouseClick(find<QAbstractButton>("chooseNew"), Qt::LeftButton);
    find<QLineEdit>("logbookName")->setText("Lower garden");
    find<QLineEdit>("logbookGrower")->setText("HB");
    auto* temperature = find<QComboBox>("logbookTemperature");
    temperature->setCurrentIndex(temperature->findData(static_cast<int>(core::TemperatureUnit::Fahrenheit)));
    auto* ec = find<QComboBox>("logbookEc");
    ec->setCurrentIndex(ec->findData(static_cast<int>(core::EcUnit::Ppm500)));
    find<QLineEdit>("logbookCurrency")->setText("chf");
    find<QLineEdit>("logbookFile")->setText(path("lower.strikebook"));
    QTest::mouseClick(find<QAbstractButton>("logbookDone"), Qt::LeftButton);
    support::settle();
    ASSERT_TRUE(workspace_->hasLogbook());
    EXPECT_TRUE(QFile::exists(path("lower.strikebook")));
    EXPECT_TRUE(window().windowTitle().startsWith("Lower garden"));
    EXPECT_TRUE(find<QLabel>("benchEmpty")->isVisible()) << "an empty bench says what it is for";
    const core::LogbookFacts facts = workspace_->shelves().facts;
    EXPECT_EQ(facts.units.temperature, core::TemperatureUnit::Fahrenheit);
    EXPECT_EQ(facts.units.ec, core::EcUnit::Ppm500);
    EXPECT_EQ(facts.currency, "CHF");
    EXPECT_EQ(memory_->lastLogbook(), path("lower.strikebook"));
    EXPECT_EQ(memory_->grower(), "HB");
}

TEST_F(LogbookCommands, MarksWhatIsWrongWithANewLogbookUnderItsField) {
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

TEST_F(LogbookCommands, SaysWhyADamagedLogbookWasNotOpenedAndOffersItsBackup) {
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
    ASSERT_TRUE(QTest::qWaitFor([&] { return workspace_->hasLogbook(); }));
    EXPECT_EQ(workspace_->logbook().batchLines().size(), 2U);
}

TEST_F(LogbookCommands, KeepsTheOpenLogbookWhenAnotherCannotBeOpened) {
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

TEST_F(LogbookCommands, BacksUpCopiesExportsAndBringsBackIn) {
    open(dueBatches(4));
    show();
    ASSERT_TRUE(QTest::qWaitFor([&] { return backups() == 1; })) << "opening makes the day's backup";
    action("fileBackUp")->trigger();
    ASSERT_TRUE(QTest::qWaitFor([&] { return backups() == 2 && barText().startsWith("Backed up to"); }));
    prompts_.willPickFileToSave(path("copy.strikebook"));
    action("fileCopy")->trigger();
    ASSERT_TRUE(QTest::qWaitFor([&] { return barText().contains("copy.strikebook"); }));
    EXPECT_TRUE(QFile::exists(path("copy.strikebook")));
    prompts_.willPickFileToSave(path("tables"));
    action("fileExport")->trigger();
    ASSERT_TRUE(QTest::qWaitFor([&] { return barText().startsWith("The tables are in"); }));
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

TEST_F(LogbookCommands, KeepsInventedRecordsOutOfALogbookOfRealOnes) {
    open(dueBatches(1));
    show();
    const core::Date day{std::chrono::year(2020), std::chrono::month(6), std::chrono::day(1)};
    core::Records invented = core::demoSeason({.batches = 3, .seed = 1, .today = day});
    db::Logbook demo = db::Logbook::create(path("demo.strikebook").toStdString(), invented.shelves.facts,
                                           {.clock = [] { return std::chrono::sys_seconds(); }, .author = "HB"});
    ASSERT_TRUE(db::addRecords(demo, std::move(invented), "invented records", true));
    db::exportFolder(demo, path("tables").toStdString());

    prompts_.willPickFolder(path("tables"));
    action("fileImport")->trigger();
    auto* bringIn = find<QPushButton>("importBringIn");
    ASSERT_TRUE(QTest::qWaitFor([&] { return bringIn->isEnabled(); }));
    bringIn->click();
    EXPECT_EQ(workspace_->logbook().batchLines().size(), 1U);
}

TEST_F(LogbookCommands, ListsTheFaultsOfTablesAndWritesNothing) {
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

TEST_F(LogbookCommands, RestoresABackupAfterAsking) {
    open(dueBatches(2));
    show();
    ASSERT_TRUE(renameGrower("Rose").isDone);
    prompts_.willConfirm(true);
    action("fileRestore")->trigger();
    find<QPushButton>("restoreButton")->click();
    ASSERT_TRUE(QTest::qWaitFor([&] { return workspace_->hasLogbook(); }));
    EXPECT_EQ(grower(), growerOnFile());
}

TEST_F(LogbookCommands, ABackupThatIsCalledOffLeavesNothingBehind) {
    open(dueBatches(2));
    show();
    ASSERT_TRUE(QTest::qWaitFor([&] { return backups() == 1; }));
    const QStringList before = namesThere();
    const auto bringsPhotos = [](db::Logbook& logbook) {
        return core::Result<db::Changes>(logbook.act("photos", [&](db::Writer& writer) {
            for (int photo = 0; photo < 8; ++photo)
                writer.add(core::PhotoRecord{.photo = {.id = {},
                                                       .batch = logbook.batchLines().front().batch.id,
                                                       .takenOn = today(),
                                                       .caption = "invented"},
                                             .image = core::ImageBytes(3'900'000)});
        }));
    };
    ASSERT_TRUE(workspace_->run(bringsPhotos).isDone) << "30 MB, of which a copy takes a while";
    prompts_.willPickFileToSave(path("copy.strikebook"));
    action("fileCopy")->trigger();
    find<QPushButton>("waitingCancel")->click();
    ASSERT_TRUE(QTest::qWaitFor([&] { return !isWaiting(); }));
    EXPECT_EQ(namesThere(), before);
    action("fileBackUp")->trigger();
    find<QPushButton>("waitingCancel")->click();
    ASSERT_TRUE(QTest::qWaitFor([&] { return !isWaiting(); }));
    EXPECT_EQ(backups(), 1U);
    prompts_.willConfirm(true);
    window().commands().restore(db::backupsOf(file_.toStdString()).front().file, file_);
    find<QPushButton>("waitingCancel")->click();
    ASSERT_TRUE(QTest::qWaitFor([&] { return !isWaiting(); }));
    ASSERT_TRUE(workspace_->hasLogbook()) << "the logbook is open again";
    EXPECT_EQ(workspace_->logbook().photos(workspace_->batchLines().front().batch.id).size(), 8U) << "as it was";
    EXPECT_EQ(namesThere(), before);
}

}  // namespace
