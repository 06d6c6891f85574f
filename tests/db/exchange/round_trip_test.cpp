// SPDX-License-Identifier: MIT
// Export then import gives the same logbook.
#include <gtest/gtest.h>

#include "core/demo/demo_season.h"
#include "db/actions/records_actions.h"
#include "db/exchange/export_folder.h"
#include "db/exchange/import_folder.h"
#include "db/exchange/write_folder.h"
#include "tests/db/exchange/exchange_folder.h"
#include "tests/db/exchange/plain_ids.h"
#include "tests/db/exchange/random_records.h"

namespace {

using namespace std::chrono_literals;

void expectSame(const core::Records& got, const core::Records& wanted) {
    const core::Records one = support::withPlainIds(got), other = support::withPlainIds(wanted);
    EXPECT_EQ(one.shelves.facts, other.shelves.facts);
    EXPECT_EQ(one.shelves.plants, other.shelves.plants);
    EXPECT_EQ(one.shelves.stockPlants, other.shelves.stockPlants);
    EXPECT_EQ(one.shelves.methods, other.shelves.methods);
    EXPECT_EQ(one.shelves.stations, other.shelves.stations);
    EXPECT_EQ(one.shelves.media, other.shelves.media);
    EXPECT_EQ(one.shelves.treatments, other.shelves.treatments);
    EXPECT_EQ(one.shelves.cuttingKinds, other.shelves.cuttingKinds);
    EXPECT_EQ(one.shelves.lossCauses, other.shelves.lossCauses);
    EXPECT_EQ(one.shelves.trials, other.shelves.trials);
    EXPECT_EQ(one.shelves.plans, other.shelves.plans);
    EXPECT_EQ(one.sessions, other.sessions);
    EXPECT_EQ(one.batches, other.batches);
    EXPECT_EQ(one.shelves.checkSchedules, other.shelves.checkSchedules);
    EXPECT_EQ(one.readings, other.readings);
    EXPECT_EQ(one.care, other.care);
    EXPECT_EQ(one.expenses, other.expenses);
    EXPECT_EQ(one.photos, other.photos);
    EXPECT_EQ(one.mixes, other.mixes);
    EXPECT_EQ(one.shelves.ownBands, other.shelves.ownBands);
    EXPECT_EQ(one.loggerDays, other.loggerDays);
    EXPECT_EQ(one.loggerFormats, other.loggerFormats);
    EXPECT_EQ(one.shelves.prices, other.shelves.prices);
    EXPECT_EQ(one.shelves.lots, other.shelves.lots);
    EXPECT_EQ(one.pottings, other.pottings);
}

core::Records importedFrom(const std::filesystem::path& folder) {
    db::FolderContents contents = db::readFolder(folder, support::lateDay);
    for (const db::ImportFault& fault : contents.faults)
        ADD_FAILURE() << fault.file << " " << fault.row << " " << fault.column << ": " << fault.reason;
    EXPECT_TRUE(contents.hasFacts);
    return std::move(contents.records);
}

db::OpenOptions options() {
    return {.clock = [] { return std::chrono::sys_days{support::lateDay} + 12h; }, .author = "R.O."};
}

db::Logbook logbookWith(const core::Records& records) {
    db::Logbook logbook = db::Logbook::inMemory(records.shelves.facts, options());
    EXPECT_TRUE(db::addRecords(logbook, records, "import", true));
    return logbook;
}

TEST(ExchangeRoundTrip, GivesTheSameRecordsForAnyLogbook) {
    for (std::uint32_t seed = 1; seed <= 60; ++seed) {
        SCOPED_TRACE(seed);
        const support::TemporaryFolder folder;
        const core::Records records = support::randomRecords(seed);
        db::writeFolder(records, folder.path());
        expectSame(importedFrom(folder.path()), records);
        if (HasFailure()) return;
    }
}

TEST(ExchangeRoundTrip, GivesTheSameLogbookForTheDemo) {
    const support::TemporaryFolder folder;
    core::Records records = core::demoSeason({.batches = 60, .seed = 3, .today = support::lateDay});
    for (int number = 1; number <= 3; ++number)
        records.photos.push_back({.photo = {.id = {number},
                                            .batch = records.batches.back().batch.id,
                                            .takenOn = records.batches.back().batch.stuckOn,
                                            .caption = "day 1"},
                                  .image = {0xFF, 0xD8, 0xFF, static_cast<std::uint8_t>(9 - number)}});
    const db::Logbook logbook = logbookWith(records);
    expectSame(logbook.records(), records);
    db::exportFolder(logbook, folder / "first");
    const db::Logbook copy = logbookWith(importedFrom(folder / "first"));
    expectSame(copy.records(), logbook.records());
    db::exportFolder(copy, folder / "second");
    for (const auto& entry : std::filesystem::recursive_directory_iterator(folder / "first")) {
        if (entry.is_directory()) continue;
        const std::string name = entry.path().lexically_relative(folder / "first").string();
        EXPECT_EQ(folder.read("first/" + name), folder.read("second/" + name)) << name;
    }
}

TEST(ExchangeRoundTrip, GivesTheSameLogbookForRandomOnes) {
    for (std::uint32_t seed = 100; seed < 106; ++seed) {
        SCOPED_TRACE(seed);
        const support::TemporaryFolder folder;
        const db::Logbook logbook = logbookWith(support::randomRecords(seed));
        db::exportFolder(logbook, folder / "copy");
        expectSame(logbookWith(importedFrom(folder / "copy")).records(), logbook.records());
    }
}

TEST(ExchangeRoundTrip, KeepsAnEmptyLogbook) {
    const support::TemporaryFolder folder;
    const db::Logbook logbook = db::Logbook::inMemory(support::factsOf("Empty"), options());
    db::exportFolder(logbook, folder / "copy");
    expectSame(logbookWith(importedFrom(folder / "copy")).records(), logbook.records());
}

}  // namespace
