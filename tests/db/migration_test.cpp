// SPDX-License-Identifier: MIT
// Migrations, tried with versions 2 and 3 that are made up here, and every schema that was ever released.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "db/logbook.h"
#include "db/migrations/open_up_to_date.h"
#include "db/safekeeping/verify.h"
#include "tests/support/every_action.h"
#include "tests/support/scratch_folder.h"
#include "tests/support/table_dump.h"

namespace {

using testing::ElementsAre;
using testing::HasSubstr;

constexpr core::Date migrationToday{std::chrono::year(2026), std::chrono::month(3), std::chrono::day(14)};

std::vector<db::Migration> withMadeUp(const char* second, const char* third) {
    std::vector<db::Migration> migrations(db::releasedMigrations().begin(), db::releasedMigrations().begin() + 1);
    migrations.push_back({2, "0002_made_up", second});
    if (third != nullptr) migrations.push_back({3, "0003_made_up", third});
    return migrations;
}

class Migrating : public testing::Test {
  protected:
    Migrating() { const auto made = support::sampleLogbook(file, migrationToday); }

    db::OpenedFile open(const std::vector<db::Migration>& migrations, bool readOnly = false) const {
        return db::openUpToDate(file, readOnly, std::chrono::milliseconds(20), migrations);
    }

    support::ScratchFolder folder;
    std::filesystem::path file = folder / "old.strikebook";
};

TEST_F(Migrating, GoesForwardStepByStepAfterABackup) {
    const std::string before = support::tableDump(file);
    const auto migrations =
        withMadeUp("CREATE TABLE photos (id INTEGER PRIMARY KEY) STRICT; ALTER TABLE plants ADD COLUMN colour TEXT",
                   "CREATE INDEX plants_by_colour ON plants (colour)");
    {
        const db::OpenedFile opened = open(migrations);
        EXPECT_EQ(opened.schemaVersion, 3);
        EXPECT_EQ(db::schemaOf(*opened.connection), db::expectedSchema(migrations, 3));
    }
    EXPECT_EQ(support::valueOf(file, "PRAGMA user_version"), "3");
    EXPECT_THAT(folder.names(), ElementsAre("old before format 3.strikebook", "old.strikebook"));
    const auto backup = folder / "old before format 3.strikebook";
    EXPECT_EQ(support::tableDump(backup), before);
    EXPECT_EQ(support::valueOf(backup, "PRAGMA user_version"), "1");
    EXPECT_EQ(db::Logbook::open(backup, support::testOptions()).batchLines().size(), 12U);
    { const db::OpenedFile again = open(migrations); }
    EXPECT_EQ(folder.names().size(), 2U) << "nothing to migrate, nothing to back up";
}

TEST_F(Migrating, AFailingOneLeavesTheFileAsItWas) {
    const std::string before = support::contentOf(file);
    const auto migrations =
        withMadeUp("CREATE TABLE photos (id INTEGER PRIMARY KEY) STRICT; INSERT INTO nowhere VALUES (1)", nullptr);
    EXPECT_THROW(static_cast<void>(open(migrations)), std::exception);
    EXPECT_EQ(support::contentOf(file), before);
    EXPECT_EQ(db::Logbook::open(file, support::testOptions()).batchLines().size(), 12U);
}

TEST_F(Migrating, AnEarlierBackupOfThatNameIsKept) {
    support::writeContent(folder / "old before format 2.strikebook", "mine");
    { const db::OpenedFile opened = open(withMadeUp("CREATE TABLE photos (id INTEGER PRIMARY KEY) STRICT", nullptr)); }
    EXPECT_EQ(support::contentOf(folder / "old before format 2.strikebook"), "mine");
    EXPECT_TRUE(std::filesystem::exists(folder / "old before format 2 2.strikebook"));
}

TEST_F(Migrating, AReadOnlyFileIsNotMigrated) {
    const std::string before = support::contentOf(file);
    const auto migrations = withMadeUp("CREATE TABLE photos (id INTEGER PRIMARY KEY) STRICT", nullptr);
    try {
        const db::OpenedFile opened = open(migrations, true);
        FAIL() << "it opened";
    } catch (const db::LogbookError& error) {
        EXPECT_THAT(error.what(), HasSubstr("was written by an older Strikebook"));
    }
    EXPECT_EQ(support::contentOf(file), before);
}

TEST_F(Migrating, AnotherProgramThatMigratesAnOpenFileIsNoticed) {
    auto logbook = db::Logbook::open(file, support::testOptions());
    { const db::OpenedFile opened = open(withMadeUp("CREATE TABLE photos (id INTEGER PRIMARY KEY) STRICT", nullptr)); }
    try {
        logbook.undo();
        FAIL() << "undone";
    } catch (const db::LogbookError& error) {
        EXPECT_THAT(error.what(), HasSubstr("newer format"));
    }
}

/// A dump kept from when the version was released. It opens, its figures are what they were, and it becomes what a new file is.
TEST(ReleasedSchema, Version1OpensWithItsFiguresAndEqualsANewFile) {
    const support::ScratchFolder folder;
    const auto file = folder / "version_0001.strikebook";
    support::runSql(file, support::contentOf(STRIKEBOOK_SOURCE_DIR "/tests/data/logbooks/version_0001.sql"));
    db::Connection connection(file.string(), SQLite::OPEN_READONLY, 0);
    EXPECT_EQ(db::schemaOf(connection), db::expectedSchema(db::releasedMigrations(), 1));

    auto logbook = db::Logbook::open(file, support::testOptions());
    EXPECT_EQ(logbook.shelves().facts.name, "Kept from version 1");
    int stuck = 0, rooted = 0, lost = 0, withdrawn = 0;
    for (const core::BatchLine& line : logbook.batchLines()) {
        stuck += line.tally.stuck;
        rooted += line.tally.rooted;
        lost += line.tally.lost;
        withdrawn += line.tally.withdrawn;
    }
    EXPECT_THAT((std::vector{stuck, rooted, lost, withdrawn}), ElementsAre(143, 89, 36, 0));
    EXPECT_THAT(db::verify(logbook, migrationToday).faults, testing::IsEmpty());
    EXPECT_EQ(logbook.wordsToRedo(), "new plant Hedera helix");
    EXPECT_TRUE(logbook.redo());
    EXPECT_TRUE(logbook.undo());
    EXPECT_TRUE(logbook.undo());
}

TEST(ReleasedMigrations, CountUpFromOne) {
    int expected = 1;
    for (const db::Migration& migration : db::releasedMigrations()) EXPECT_EQ(migration.version, expected++);
}

}  // namespace
