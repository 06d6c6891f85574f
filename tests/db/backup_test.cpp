// SPDX-License-Identifier: MIT
#include "db/safekeeping/backup.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <functional>
#include <stop_token>
#include <utility>

#include "db/writer.h"
#include "tests/support/every_action.h"
#include "tests/support/scratch_folder.h"
#include "tests/support/table_dump.h"

namespace {

using testing::ElementsAre;
using testing::HasSubstr;
using testing::IsEmpty;

constexpr core::Date backupToday{std::chrono::year(2026), std::chrono::month(3), std::chrono::day(14)};

std::filesystem::path nameOf(const db::BackupFile& backup) {
    return backup.file.filename();
}

class Backup : public testing::Test {
  protected:
    Backup() {
        const auto made = support::sampleLogbook(file, backupToday);
        moment = std::chrono::sys_days(backupToday) + std::chrono::hours(10) + std::chrono::seconds(5);
    }

    db::Clock clock() {
        return [this] { return moment; };
    }
    db::Logbook open(bool asWindow = false) {
        db::OpenOptions options = support::testOptions();
        options.clock = clock();
        options.asWindow = asWindow;
        return db::Logbook::open(file, options);
    }
    static void addMethod(db::Logbook& logbook, const std::string& name) {
        logbook.act(name, [&](db::Writer& writer) {
            core::Method method;
            method.name = name;
            writer.add(method);
        });
    }

    /// So much that it is copied in several steps.
    void addPhotos() {
        auto logbook = open();
        logbook.act("photos", [&](db::Writer& writer) {
            for (int photo = 0; photo < 3; ++photo)
                writer.add(core::PhotoRecord{.photo = {.id = {},
                                                       .batch = logbook.batchLines().front().batch.id,
                                                       .takenOn = backupToday,
                                                       .caption = "invented"},
                                             .image = core::ImageBytes(1'000'000)});
        });
    }
    /// Calls the work off at the first share it tells, then at the second, and so on until it comes through. How often it was called off.
    static int callOffEverywhere(const std::function<bool(const db::Waiting&)>& work,
                                 const std::function<void()>& nothingIsLeft) {
        for (int calledOff = 0;; ++calledOff) {
            std::stop_source stop;
            int told = 0;
            double last = 0;
            const bool isDone = work({.stop = stop.get_token(), .tell = [&](double share) {
                                          EXPECT_TRUE(share >= last && share <= 1) << share << " after " << last;
                                          last = share;
                                          if (told++ == calledOff) stop.request_stop();
                                      }});
            if (isDone) return calledOff;
            nothingIsLeft();
        }
    }

    support::ScratchFolder folder;
    std::filesystem::path file = folder / "bench.strikebook";
    std::chrono::sys_seconds moment;
};

TEST_F(Backup, IsAWholeLogbookWithItsHistory) {
    const auto copy = folder / "copy.strikebook";
    const auto logbook = open();
    db::backUp(logbook, copy);
    EXPECT_EQ(support::tableDump(copy), support::tableDump(file));
    auto opened = db::Logbook::open(copy, support::testOptions());
    EXPECT_EQ(opened.wordsToUndo(), "sample records");
    EXPECT_TRUE(opened.undo());
    EXPECT_EQ(logbook.batchLines().size(), 12U);
    EXPECT_THAT(folder.names(), ElementsAre("bench.strikebook", "copy.strikebook"));
}

TEST_F(Backup, NeverWritesOverAFile) {
    const auto mine = folder / "mine.strikebook";
    support::writeContent(mine, "mine");
    try {
        db::backUp(open(), mine);
        FAIL() << "written";
    } catch (const db::LogbookError& error) {
        EXPECT_THAT(error.what(), HasSubstr("there is a file of that name already"));
    }
    EXPECT_EQ(support::contentOf(mine), "mine");
    EXPECT_THAT(folder.names(), ElementsAre("bench.strikebook", "mine.strikebook"));
}

TEST_F(Backup, CalledOffAnywhereLeavesNothingBehind) {
    addPhotos();
    const auto logbook = open();
    const auto onlyItself = [&] { EXPECT_THAT(folder.names(), ElementsAre("bench.strikebook")); };
    const auto copy = folder / "copy.strikebook";
    EXPECT_GE(
        callOffEverywhere([&](const db::Waiting& waiting) { return db::backUp(logbook, copy, waiting); }, onlyItself),
        3);
    EXPECT_EQ(support::tableDump(copy), support::tableDump(file));
    std::filesystem::remove(copy);
    EXPECT_GE(callOffEverywhere(
                  [&](const db::Waiting& waiting) {
                      return !db::backUpAutomatically(logbook, true, db::backupsKept, waiting).empty();
                  },
                  onlyItself),
              3);
    EXPECT_EQ(db::backupsOf(file).size(), 1U);
}

TEST_F(Backup, IsWholeAlsoWhenTheLogbookIsWrittenMeanwhile) {
    addPhotos();
    auto logbook = open();
    const auto beside = logbook.beside();
    ASSERT_TRUE(beside.has_value());
    bool isWritten = false;
    const auto copy = folder / "copy.strikebook";
    EXPECT_TRUE(db::backUp(*beside, copy, {.stop = {}, .tell = [&](double) {
                                               if (!std::exchange(isWritten, true)) addMethod(logbook, "in between");
                                           }}));
    EXPECT_TRUE(isWritten);
    EXPECT_EQ(support::tableDump(copy), support::tableDump(file));
}

TEST_F(Backup, OfALogbookInMemoryWorksToo) {
    const auto copy = folder / "copy.strikebook";
    const auto logbook = support::sampleLogbook({}, backupToday, 3);
    db::backUp(logbook, copy);
    EXPECT_EQ(db::Logbook::open(copy, support::testOptions()).batchRecords(), logbook.batchRecords());
    EXPECT_TRUE(db::backUpAutomatically(logbook).empty());
}

TEST_F(Backup, ComesOnceADayByItselfAndKeepsTheNewest) {
    const auto logbook = open();
    for (int day = 0; day < 5; ++day, moment += std::chrono::days(1)) {
        EXPECT_FALSE(db::backUpAutomatically(logbook, false, 3).empty());
        EXPECT_TRUE(db::backUpAutomatically(logbook, false, 3).empty());
    }
    const auto backups = db::backupsOf(file);
    ASSERT_EQ(backups.size(), 3U);
    EXPECT_EQ(backups[0].madeAt, "2026-03-18T10:00:05Z");
    EXPECT_EQ(nameOf(backups[0]), "bench 2026-03-18 100005.strikebook");
    EXPECT_EQ(backups[2].madeAt, "2026-03-16T10:00:05Z");
    EXPECT_EQ(db::backupFolder(file), folder / "bench backups");
}

TEST_F(Backup, AlwaysMakesOneMoreAlsoWithinTheSameSecond) {
    const auto logbook = open();
    EXPECT_FALSE(db::backUpAutomatically(logbook, true).empty());
    EXPECT_FALSE(db::backUpAutomatically(logbook, true).empty());
    EXPECT_EQ(db::backupsOf(file).size(), 2U);
}

TEST_F(Backup, OtherFilesInItsFolderAreLeftAlone) {
    std::filesystem::create_directory(db::backupFolder(file));
    for (const char* name :
         {"bench.strikebook", "bench 2026-03-18 10000x.strikebook", "tubs 2026-03-18 100005.strikebook", "note.txt"})
        support::writeContent(db::backupFolder(file) / name, "mine");
    EXPECT_THAT(db::backupsOf(file), IsEmpty());
    db::backUpAutomatically(open(), true, 1);
    EXPECT_EQ(db::backupsOf(file).size(), 1U);
    EXPECT_EQ(support::contentOf(db::backupFolder(file) / "note.txt"), "mine");
}

TEST_F(Backup, RestoreGivesBackTheOldStateAndKeepsTheNew) {
    std::filesystem::path backup;
    {
        auto logbook = open();
        backup = db::backUpAutomatically(logbook);
        addMethod(logbook, "after the backup");
    }
    const std::string newer = support::tableDump(file), older = support::tableDump(backup);
    ASSERT_NE(newer, older);
    db::restore(backup, file, clock());
    EXPECT_EQ(support::tableDump(file), older);
    EXPECT_THAT(folder.names(), ElementsAre("bench backups", "bench.strikebook"));
    const auto backups = db::backupsOf(file);
    ASSERT_EQ(backups.size(), 2U);
    EXPECT_EQ(support::tableDump(backups[0].file), newer);
}

TEST_F(Backup, RestoreCalledOffAnywhereLeavesEverythingAsItWas) {
    addPhotos();
    const auto kept = folder / "kept.strikebook";
    {
        auto logbook = open();
        EXPECT_TRUE(db::backUp(logbook, kept));
        addMethod(logbook, "after the backup");
    }
    const std::string older = support::tableDump(kept), newer = support::contentOf(file);
    EXPECT_GE(callOffEverywhere([&](const db::Waiting& waiting) { return db::restore(kept, file, clock(), waiting); },
                                [&] {
                                    EXPECT_EQ(support::contentOf(file), newer);
                                    EXPECT_THAT(folder.names(), ElementsAre("bench.strikebook", "kept.strikebook"));
                                }),
              6);
    EXPECT_EQ(support::tableDump(file), older);
}

TEST_F(Backup, RestoreOverADamagedLogbookKeepsItByteForByte) {
    std::filesystem::path backup;
    {
        auto logbook = open();
        backup = db::backUpAutomatically(logbook);
    }
    const std::string older = support::tableDump(file);
    support::writeContent(file, "overwritten by a cat");
    support::writeContent(file.string() + "-journal", "and its journal");
    db::restore(backup, file, clock());
    EXPECT_EQ(support::tableDump(file), older);
    EXPECT_FALSE(std::filesystem::exists(file.string() + "-journal"));
    EXPECT_EQ(support::contentOf(db::backupFolder(file) / "bench damaged.strikebook"), "overwritten by a cat");
    EXPECT_EQ(support::contentOf(db::backupFolder(file) / "bench damaged.strikebook-journal"), "and its journal");
}

TEST_F(Backup, RestoreWhereThereIsNothingYet) {
    const auto backup = db::backUpAutomatically(open());
    const std::string older = support::tableDump(file);
    std::filesystem::remove(file);
    db::restore(backup, file, clock());
    EXPECT_EQ(support::tableDump(file), older);
}

TEST_F(Backup, RestoreOfADamagedBackupChangesNothing) {
    const std::string before = support::contentOf(file);
    const auto bad = folder / "bad.strikebook";
    support::writeContent(bad, before.substr(0, before.size() / 2));
    EXPECT_THROW(db::restore(bad, file, clock()), db::LogbookError);
    EXPECT_EQ(support::contentOf(file), before);
}

TEST_F(Backup, RestoreIsRefusedWhileAWindowHasTheLogbook) {
    const auto window = open(true);
    const auto backup = db::backUpAutomatically(window);
    try {
        db::restore(backup, file, clock());
        FAIL() << "restored";
    } catch (const db::LogbookError& error) {
        EXPECT_THAT(error.what(), HasSubstr("is open in another window"));
    }
}

}  // namespace
