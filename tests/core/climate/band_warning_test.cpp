// SPDX-License-Identifier: MIT
#include "core/climate/band_warning.h"

#include <gtest/gtest.h>

#include "tests/support/builders.h"

namespace {

using core::Stage;
using support::aBatch;

core::BatchLine lineOf(const core::BatchRecord& record) {
    return {.batch = record.batch, .tally = core::tallyOf(record.batch, record.checks)};
}

core::Reading ecOf(double value) {
    return {.station = support::tubNorth, .quantity = core::Quantity::SolutionEc, .value = value};
}

std::optional<core::BandWarning> warningBeside(const std::vector<core::BatchRecord>& batches, double ec) {
    std::vector<core::BatchLine> lines;
    for (const core::BatchRecord& record : batches) lines.push_back(lineOf(record));
    const auto standing = core::standingByStation(lines);
    const auto here = standing.find(support::tubNorth);
    if (here == standing.end()) return {};
    return core::warningOf(ecOf(ec), here->second, support::someShelves());
}

TEST(BandWarning, GoesByTheStageOfWhatStandsThere) {
    const core::BatchRecord young = aBatch(), rooting = aBatch().looked(14, {.rooted = 3});
    EXPECT_TRUE(warningBeside({young}, 0.8));
    EXPECT_FALSE(warningBeside({rooting}, 0.8));
    EXPECT_TRUE(warningBeside({rooting}, 0.3));
    EXPECT_FALSE(warningBeside({young}, 0.3));
}

TEST(BandWarning, IsTheStrictestOfSeveral) {
    const core::BatchRecord young = aBatch(), rooting = aBatch().looked(14, {.rooted = 3});
    EXPECT_EQ(warningBeside({rooting, young}, 0.8)->standing.stage, Stage::BeforeRoots);
    EXPECT_EQ(warningBeside({rooting, young}, 1.5)->standing.stage, Stage::BeforeRoots);  // one off, not a half
    EXPECT_EQ(warningBeside({young, rooting}, 0.2)->standing.stage, Stage::FirstRoots);
}

TEST(BandWarning, IsNoneWhereNothingStandsAnyMore) {
    EXPECT_FALSE(warningBeside({}, 3));
    EXPECT_FALSE(warningBeside({aBatch().stuck(3).looked(14, {.lost = 3})}, 3));
}

TEST(NewestReadings, OfHandAndLoggerAreTheLaterOfBoth) {
    core::Reading hand = ecOf(0.5), logged = ecOf(0.7), other = ecOf(0.9);
    hand.readAt = core::Moment{std::chrono::seconds{100}};
    logged.readAt = core::Moment{std::chrono::seconds{200}};
    other.station = support::tubSouth;
    const auto newest = core::newestOf({hand}, std::vector{logged, other});
    ASSERT_EQ(newest.size(), 2U);
    EXPECT_EQ(newest[0].value, 0.7);
    logged.readAt = core::Moment{std::chrono::seconds{50}};
    EXPECT_EQ(core::newestOf({hand}, std::vector{logged})[0].value, 0.5);
}

}  // namespace
