// SPDX-License-Identifier: MIT
#include "db/actions/records_actions.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/demo/demo_season.h"
#include "tests/support/every_action.h"

namespace {

using testing::HasSubstr;

constexpr core::Date recordsToday{std::chrono::year(2026), std::chrono::month(3), std::chrono::day(14)};

core::Records demo(int batches, std::uint32_t seed) {
    return core::demoSeason({.batches = batches, .seed = seed, .today = recordsToday});
}

TEST(AddRecords, BringsEverythingIntoANewLogbookWithItsIds) {
    auto logbook = db::Logbook::inMemory({}, support::testOptions());
    const core::Records records = demo(30, 5);
    const auto done = db::addRecords(logbook, records, "the demo", true);
    ASSERT_TRUE(done);
    EXPECT_EQ(done->batches.size(), 30U);
    EXPECT_EQ(logbook.shelves().facts, records.shelves.facts);
    for (const core::BatchRecord& record : records.batches) {
        const auto there = logbook.batch(record.batch.id);
        ASSERT_TRUE(there.has_value());
        ASSERT_EQ(there->checks.size(), record.checks.size());
        for (std::size_t i = 0; i < record.checks.size(); ++i) {
            EXPECT_EQ(there->checks[i].rooted, record.checks[i].rooted);
            EXPECT_EQ(there->checks[i].lost(), record.checks[i].lost());
            EXPECT_EQ(there->checks[i].id, record.checks[i].id);
        }
    }
    EXPECT_EQ(logbook.history().size(), 1U);
}

TEST(AddRecords, UsesWhatHasTheSameNameAndLeavesItAsItIs) {
    auto logbook = db::Logbook::inMemory({}, support::testOptions());
    const core::Shelves before = logbook.shelves();
    const core::Records records = demo(10, 5);
    ASSERT_TRUE(db::addRecords(logbook, records, "the demo"));
    const core::Shelves after = logbook.shelves();
    EXPECT_EQ(after.methods, before.methods);
    EXPECT_EQ(after.facts, before.facts);
    for (const core::LossCause& cause : before.lossCauses) EXPECT_EQ(*core::find(after.lossCauses, cause.id), cause);
    for (const core::BatchRecord& record : logbook.batchRecords()) {
        EXPECT_NE(core::find(after.methods, record.batch.method), nullptr);
        EXPECT_NE(core::find(after.plants, record.batch.plant), nullptr);
        EXPECT_NE(core::find(after.stations, record.batch.station), nullptr);
    }
}

TEST(AddRecords, IntoALogbookWithRecordsGivesNewIds) {
    auto logbook = support::sampleLogbook({}, recordsToday, 5);
    core::Records again = demo(5, 7);  // the very same ones
    for (core::BatchRecord& record : again.batches) record.batch.code = "again " + record.batch.code;
    ASSERT_TRUE(db::addRecords(logbook, again, "again"));
    EXPECT_EQ(logbook.batchLines().size(), 10U);
    logbook.undo();
    EXPECT_EQ(logbook.batchLines().size(), 5U);
}

TEST(AddRecords, RefusesCodesThatAreTakenOrComeTwiceAndWritesNothing) {
    auto logbook = support::sampleLogbook({}, recordsToday, 5);
    const auto taken = db::addRecords(logbook, demo(5, 7), "again");
    ASSERT_FALSE(taken);
    EXPECT_EQ(taken.error().size(), 5U);
    EXPECT_THAT(taken.error().front().sentence, HasSubstr("is in the logbook already"));
    core::Records twice = demo(2, 9);
    twice.batches[0].batch.code = twice.batches[1].batch.code = "twin";
    EXPECT_FALSE(db::addRecords(logbook, twice, "twins"));
    EXPECT_EQ(logbook.history().size(), 1U);
}

TEST(AddRecords, ACauseThatIsNewGivesUpAKeyThatIsTaken) {
    auto logbook = db::Logbook::inMemory({}, support::testOptions());
    core::Records records;
    records.shelves.lossCauses.push_back({.id = {11}, .name = "root rot", .key = 'r', .isRetired = false});
    ASSERT_TRUE(db::addRecords(logbook, records, "causes"));
    EXPECT_EQ(logbook.shelves().lossCauses.back().name, "root rot");
    EXPECT_EQ(logbook.shelves().lossCauses.back().key, '\0');
}

TEST(AddRecords, StopsWhenAskedAndWritesNothing) {
    auto logbook = db::Logbook::inMemory({}, support::testOptions());
    std::stop_source stop;
    stop.request_stop();
    EXPECT_FALSE(db::addRecords(logbook, demo(10, 5), "the demo", true, stop.get_token()));
    EXPECT_TRUE(logbook.batchLines().empty());
    EXPECT_TRUE(logbook.history().empty());
}

}  // namespace
