// SPDX-License-Identifier: MIT
// Migrations, tried with further versions that are made up here, and every schema that was ever released.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>

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

std::vector<db::Migration> withMadeUp(const char* next, const char* last) {
    std::vector<db::Migration> migrations(db::releasedMigrations().begin(), db::releasedMigrations().end());
    migrations.push_back({6, "0006_made_up", next});
    if (last != nullptr) migrations.push_back({7, "0007_made_up", last});
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
        withMadeUp("CREATE TABLE moons (id INTEGER PRIMARY KEY) STRICT; ALTER TABLE plants ADD COLUMN colour TEXT",
                   "CREATE INDEX plants_by_colour ON plants (colour)");
    {
        const db::OpenedFile opened = open(migrations);
        EXPECT_EQ(opened.schemaVersion, 7);
        EXPECT_EQ(db::schemaOf(*opened.connection), db::expectedSchema(migrations, 7));
    }
    EXPECT_EQ(support::valueOf(file, "PRAGMA user_version"), "7");
    EXPECT_THAT(folder.names(), ElementsAre("old before format 7.strikebook", "old.strikebook"));
    const auto backup = folder / "old before format 7.strikebook";
    EXPECT_EQ(support::tableDump(backup), before);
    EXPECT_EQ(support::valueOf(backup, "PRAGMA user_version"), "5");
    EXPECT_EQ(db::Logbook::open(backup, support::testOptions()).batchLines().size(), 12U);
    { const db::OpenedFile again = open(migrations); }
    EXPECT_EQ(folder.names().size(), 2U) << "nothing to migrate, nothing to back up";
}

TEST_F(Migrating, AFailingOneLeavesTheFileAsItWas) {
    const std::string before = support::contentOf(file);
    const auto migrations =
        withMadeUp("CREATE TABLE moons (id INTEGER PRIMARY KEY) STRICT; INSERT INTO nowhere VALUES (1)", nullptr);
    EXPECT_THROW(static_cast<void>(open(migrations)), std::exception);
    EXPECT_EQ(support::contentOf(file), before);
    EXPECT_EQ(db::Logbook::open(file, support::testOptions()).batchLines().size(), 12U);
}

TEST_F(Migrating, AnEarlierBackupOfThatNameIsKept) {
    support::writeContent(folder / "old before format 6.strikebook", "mine");
    { const db::OpenedFile opened = open(withMadeUp("CREATE TABLE moons (id INTEGER PRIMARY KEY) STRICT", nullptr)); }
    EXPECT_EQ(support::contentOf(folder / "old before format 6.strikebook"), "mine");
    EXPECT_TRUE(std::filesystem::exists(folder / "old before format 6 2.strikebook"));
}

TEST_F(Migrating, AReadOnlyFileIsNotMigrated) {
    const std::string before = support::contentOf(file);
    const auto migrations = withMadeUp("CREATE TABLE moons (id INTEGER PRIMARY KEY) STRICT", nullptr);
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
    { const db::OpenedFile opened = open(withMadeUp("CREATE TABLE moons (id INTEGER PRIMARY KEY) STRICT", nullptr)); }
    try {
        logbook.undo();
        FAIL() << "undone";
    } catch (const db::LogbookError& error) {
        EXPECT_THAT(error.what(), HasSubstr("newer format"));
    }
}

/// A dump kept from when the version was released, as a file.
class ReleasedSchema : public testing::Test {
  protected:
    std::filesystem::path kept(int version) const {
        const std::string name = "version_000" + std::to_string(version);
        const auto file = folder / (name + ".strikebook");
        support::runSql(file, support::contentOf(STRIKEBOOK_SOURCE_DIR "/tests/data/logbooks/" + name + ".sql"));
        db::Connection connection(file.string(), SQLite::OPEN_READONLY, 0);
        EXPECT_EQ(db::schemaOf(connection), db::expectedSchema(db::releasedMigrations(), version));
        return file;
    }

    static std::vector<int> countsIn(const db::Logbook& logbook) {
        std::vector<int> counts(4);
        for (const core::BatchLine& line : logbook.batchLines()) {
            counts[0] += line.tally.stuck;
            counts[1] += line.tally.rooted;
            counts[2] += line.tally.lost;
            counts[3] += line.tally.withdrawn;
        }
        return counts;
    }

    static void expectNewestSchema(const std::filesystem::path& file) {
        db::Connection connection(file.string(), SQLite::OPEN_READONLY, 0);
        const auto& released = db::releasedMigrations();
        EXPECT_EQ(db::schemaOf(connection), db::expectedSchema(released, db::newestVersion(released)));
    }

    support::ScratchFolder folder;
};

TEST_F(ReleasedSchema, Version1OpensWithItsFiguresAndEqualsANewFile) {
    const auto file = kept(1);
    const std::string before = support::tableDump(file);
    auto logbook = db::Logbook::open(file, support::testOptions());
    expectNewestSchema(file);
    EXPECT_THAT(folder.names(), ElementsAre("version_0001 before format 5.strikebook", "version_0001.strikebook"));
    EXPECT_EQ(support::tableDump(folder / "version_0001 before format 5.strikebook"), before);
    EXPECT_EQ(logbook.shelves().facts.name, "Kept from version 1");
    EXPECT_THAT(countsIn(logbook), ElementsAre(143, 89, 36, 0));
    EXPECT_THAT(db::verify(logbook, migrationToday).faults, testing::IsEmpty());
    EXPECT_FALSE(logbook.wordsToUndo()) << "sealed by the migration";
    EXPECT_FALSE(logbook.wordsToRedo());
}

TEST_F(ReleasedSchema, Version1IsGivenWhatANewLogbookHasOfTheRest) {
    const auto logbook = db::Logbook::open(kept(1), support::testOptions());
    const core::Shelves shelves = logbook.shelves();
    const core::LogbookFacts usual;
    EXPECT_EQ(shelves.facts.interval, usual.interval);
    EXPECT_EQ(shelves.facts.units, usual.units);
    EXPECT_EQ(shelves.facts.currency, usual.currency);
    for (const core::Station& station : shelves.stations) EXPECT_TRUE(!station.isStaggered && station.blocked.empty());
    for (const core::Plant& plant : shelves.plants) EXPECT_FALSE(plant.checkSchedule.isSet());
    for (const core::Method& method : shelves.methods) EXPECT_FALSE(method.checkSchedule.isSet());
    const core::Records records = logbook.records();
    for (const core::BatchRecord& record : records.batches) EXPECT_EQ(record.batch.positions, "");
    EXPECT_TRUE(records.readings.empty() && records.care.empty() && records.photos.empty() && records.expenses.empty());
}

TEST_F(ReleasedSchema, Version1IsLeftAloneWhereItMayOnlyBeRead) {
    const auto file = kept(1);
    const std::string before = support::contentOf(file);
    db::OpenOptions options = support::testOptions();
    options.access = db::Access::ReadOnly;
    try {
        const auto logbook = db::Logbook::open(file, options);
        FAIL() << "it opened";
    } catch (const db::LogbookError& error) {
        EXPECT_THAT(error.what(), HasSubstr("was written by an older Strikebook"));
    }
    EXPECT_EQ(support::contentOf(file), before);
    EXPECT_THAT(folder.names(), ElementsAre("version_0001.strikebook"));
}

TEST_F(ReleasedSchema, Version2OpensWithItsFiguresAndItsTrialsAsTheyWere) {
    const auto file = kept(2);
    auto logbook = db::Logbook::open(file, support::testOptions());
    expectNewestSchema(file);
    EXPECT_EQ(logbook.shelves().facts.name, "Kept from version 2");
    EXPECT_THAT(countsIn(logbook), ElementsAre(94, 76, 15, 0));
    const core::Records records = logbook.records();
    EXPECT_THAT((std::vector{records.readings.size(), records.care.size(), records.photos.size(),
                             records.expenses.size(), records.shelves.checkSchedules.size()}),
                ElementsAre(40U, 12U, 1U, 1U, 1U));
    EXPECT_THAT(db::verify(logbook, migrationToday).faults, testing::IsEmpty());
    EXPECT_FALSE(logbook.wordsToUndo()) << "sealed by the migration";
    EXPECT_FALSE(logbook.wordsToRedo());
    EXPECT_TRUE(records.shelves.plans.empty());
    ASSERT_EQ(records.shelves.trials.size(), 2U);
    core::Trial named;
    for (const core::Trial& trial : records.shelves.trials) {
        EXPECT_EQ(trial.horizonDay, 42);
        named.id = trial.id;
        named.name = trial.name;
        named.horizonDay = trial.horizonDay;
        named.allocationSeed = trial.allocationSeed;
        named.note = trial.note;
        EXPECT_EQ(trial, named) << "only named, as before";
    }
}

TEST_F(ReleasedSchema, Version3OpensWithItsFiguresItsTrialAndItsHistory) {
    const auto file = kept(3);
    auto logbook = db::Logbook::open(file, support::testOptions());
    expectNewestSchema(file);
    EXPECT_EQ(logbook.shelves().facts.name, "Kept from version 3");
    EXPECT_THAT(countsIn(logbook), ElementsAre(98, 58, 22, 0));
    EXPECT_THAT(db::verify(logbook, migrationToday).faults, testing::IsEmpty());
    const core::Shelves shelves = logbook.shelves();
    const auto trial = std::ranges::find(shelves.trials, "Gel on germander", &core::Trial::name);
    ASSERT_NE(trial, shelves.trials.end());
    EXPECT_EQ(trial->horizonDay, 35);
    ASSERT_EQ(trial->changes.size(), 1U);
    EXPECT_EQ(trial->changes.front().was, "28");
    EXPECT_EQ(trial->changes.front().reason, "A cold week held everything up.");
    EXPECT_EQ(trial->arms.size(), 2U);
    EXPECT_EQ(std::ranges::count_if(trial->batches, [](const core::TrialBatch& dealt) { return dealt.batch.isSet(); }),
              4);
    EXPECT_EQ(trial->batches.size(), 8U);
    ASSERT_EQ(shelves.plans.size(), 2U);
    EXPECT_EQ(shelves.plans.front().wanted, 40);
    EXPECT_FALSE(logbook.wordsToUndo()) << "sealed by the migration";
    EXPECT_FALSE(logbook.wordsToRedo());
    const auto before = logbook.history();
    EXPECT_TRUE(std::ranges::any_of(
        before, [](const db::HistoryEntry& entry) { return entry.words == "new plant Hedera helix"; }));
}

TEST_F(ReleasedSchema, Version3IsGivenWhatANewLogbookHasOfTheRestAndKeepsItsReadings) {
    const auto file = kept(3);
    const std::string before =
        support::valueOf(file, "SELECT group_concat(id || read_at || value || note) FROM readings");
    ASSERT_FALSE(before.empty());
    const auto logbook = db::Logbook::open(file, support::testOptions());
    EXPECT_EQ(support::valueOf(file, "SELECT group_concat(id || read_at || value || note) FROM readings"), before);
    const core::Records records = logbook.records();
    const core::LogbookFacts usual;
    EXPECT_EQ(records.shelves.facts.altitudeMetres, usual.altitudeMetres);
    EXPECT_EQ(records.shelves.facts.degreeDayBase, usual.degreeDayBase);
    EXPECT_EQ(records.shelves.facts.falseAlarmRate, usual.falseAlarmRate);
    for (const core::Plant& plant : records.shelves.plants) EXPECT_FALSE(plant.isEdible);
    for (const core::BatchRecord& record : records.batches) EXPECT_EQ(record.batch.licence, "");
    for (const core::Care& care : records.care) EXPECT_FALSE(care.litres);
    EXPECT_TRUE(records.mixes.empty() && records.loggerDays.empty() && records.loggerFormats.empty() &&
                records.shelves.ownBands.empty());
}

TEST_F(ReleasedSchema, Version4OpensWithWhatALoggerRecordedItsMixesItsBandsAndItsHistory) {
    auto logbook = db::Logbook::open(kept(4), support::testOptions());
    const core::Records records = logbook.records();
    EXPECT_EQ(records.shelves.facts.name, "Kept from version 4");
    EXPECT_EQ(records.shelves.facts.altitudeMetres, 430);
    EXPECT_EQ(records.shelves.facts.degreeDayBase, 8);
    EXPECT_EQ(records.shelves.facts.falseAlarmRate, 0.02);
    EXPECT_THAT(countsIn(logbook), ElementsAre(103, 50, 35, 0));
    EXPECT_THAT(db::verify(logbook, migrationToday).faults, testing::IsEmpty());
    ASSERT_EQ(records.loggerDays.size(), 2U);
    EXPECT_EQ(records.loggerDays.front().samples.size(), 8U);
    EXPECT_EQ(records.loggerDays.front().samples.front(), (core::Sample{.second = 17, .value = 18}));
    ASSERT_EQ(records.mixes.size(), 2U);
    EXPECT_EQ(logbook.mixes(records.mixes.back().care), std::vector{records.mixes.back()});
    EXPECT_EQ(records.mixes.back().amounts, "5.2 g of salts\n12 L of water");
    ASSERT_EQ(records.shelves.ownBands.size(), 2U);
    EXPECT_EQ(records.shelves.ownBands.front().high, 0.4);
    EXPECT_EQ(records.shelves.ownBands.back().low, 17);
    EXPECT_EQ(std::ranges::count(records.shelves.plants, true, &core::Plant::isEdible), 1);
    EXPECT_EQ(records.batches.front().batch.licence, "Licence 12/7 of an invented breeder");
    EXPECT_EQ(std::ranges::count(records.readings, core::Quantity::LeafTemperature, &core::Reading::quantity), 1);
    EXPECT_EQ(logbook.loggerFormats().front().name, "greenhouse logger");
    EXPECT_FALSE(logbook.wordsToUndo()) << "sealed by the migration";
    EXPECT_FALSE(logbook.wordsToRedo());
    EXPECT_EQ(logbook.history().front().words, "new plant Hedera helix");
}

TEST_F(ReleasedSchema, Version4KeepsItsExpensesAndHasNeitherPricesNorLots) {
    const auto file = kept(4);
    const std::string before = support::valueOf(
        file, "SELECT group_concat(id || batch_id || spent_on || what || amount_hundredths) FROM expenses");
    ASSERT_FALSE(before.empty());
    const auto logbook = db::Logbook::open(file, support::testOptions());
    EXPECT_EQ(support::valueOf(
                  file, "SELECT group_concat(id || batch_id || spent_on || what || amount_hundredths) FROM expenses"),
              before);
    const core::Records records = logbook.records();
    for (const core::Expense& expense : records.expenses) EXPECT_FALSE(expense.session.isSet() || expense.minutes);
    EXPECT_TRUE(records.shelves.prices.empty() && records.shelves.lots.empty() && records.pottings.empty());
}

TEST_F(ReleasedSchema, Version5OpensWithItsPricesLotsCountsAfterPottingAndItsHistory) {
    const auto file = kept(5);
    auto logbook = db::Logbook::open(file, support::testOptions());
    EXPECT_THAT(folder.names(), ElementsAre("version_0005.strikebook"));
    const core::Records records = logbook.records();
    EXPECT_EQ(records.shelves.facts.name, "Kept from version 5");
    EXPECT_THAT(db::verify(logbook, migrationToday).faults, testing::IsEmpty());
    const std::vector<core::Price>& prices = records.shelves.prices;
    ASSERT_EQ(prices.size(), 5U);
    EXPECT_EQ(prices[0].what, "air pump");
    EXPECT_TRUE(prices[0].method.isSet());
    EXPECT_EQ(prices[0].lastsYears, 4);
    EXPECT_EQ(prices[1].basis, core::PriceBasis::Cutting);
    EXPECT_EQ(prices[1].lastsFor, 400);
    EXPECT_EQ(prices[2].tenThousandths, 2800);
    EXPECT_EQ(prices[3].tenThousandths, 3125);
    EXPECT_EQ(core::isoText(prices[3].from), "2026-02-01");
    EXPECT_EQ(prices[4].minutes, 1.5);
    ASSERT_EQ(records.shelves.lots.size(), 2U);
    EXPECT_EQ(records.shelves.lots.front().name, "opened in winter");
    EXPECT_EQ(core::isoText(records.shelves.lots.front().madeOn.value_or(core::Date{})), "2025-11-20");
    const core::PottedTally tally = core::pottedTallyOf(records.pottings);
    EXPECT_EQ(tally, (core::PottedTally{.potted = 6, .lost = 1}));
    const auto ofSession =
        std::ranges::find_if(records.expenses, [](const core::Expense& expense) { return expense.session.isSet(); });
    ASSERT_NE(ofSession, records.expenses.end());
    EXPECT_EQ(ofSession->minutes, 45);
    EXPECT_EQ(logbook.wordsToRedo(), "new plant Hedera helix");
    EXPECT_TRUE(logbook.redo());
    EXPECT_TRUE(logbook.undo());
    while (logbook.undo()) {
    }
    EXPECT_TRUE(logbook.batchLines().empty());
    EXPECT_TRUE(logbook.shelves().prices.empty() && logbook.allPottings().empty());
}

TEST(ReleasedMigrations, CountUpFromOne) {
    int expected = 1;
    for (const db::Migration& migration : db::releasedMigrations()) EXPECT_EQ(migration.version, expected++);
}

}  // namespace
