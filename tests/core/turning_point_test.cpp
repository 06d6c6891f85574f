// SPDX-License-Identifier: MIT
#include "core/comparison/turning_point.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <string>
#include <vector>

#include "core/comparison/spread.h"
#include "tests/support/builders.h"

namespace {

using support::aBatch;
using testing::HasSubstr;

/// One batch of 20 a week, `rooted` by day 28.
std::vector<core::BatchRecord> weekByWeek(const std::vector<int>& rooted) {
    std::vector<core::BatchRecord> batches;
    for (const int count : rooted) {
        const int week = static_cast<int>(batches.size());
        batches.push_back(aBatch()
                              .code("W" + std::to_string(week + 1))
                              .stuck(20)
                              .stuckOn(core::addDays(support::stickingDay(), 7 * week))
                              .looked(28, {.rooted = count}));
    }
    return batches;
}

/// Spread from other plants whose batches are much alike.
stats::PooledSpread littleSpread() {
    return stats::pooledSpread(std::vector<std::vector<stats::Tray>>(12, {{15, 20}, {14, 20}, {16, 20}}));
}

std::optional<core::TurningPoint> turnOf(const std::vector<core::BatchRecord>& batches) {
    std::vector<core::Course> courses;
    for (const core::BatchRecord& record : batches) courses.push_back(core::courseOf(record, 28));
    return core::turningPointOf(courses, littleSpread(), 0.95);
}

const std::vector<int> fewerFromTheNinth{15, 16, 14, 15, 17, 15, 14, 16, 7, 8, 6, 9, 7, 8};

TEST(TurningPoint, NamesTheBatchFromWhichFewerRooted) {
    const core::TurningPoint turn = turnOf(weekByWeek(fewerFromTheNinth)).value();
    EXPECT_TRUE(turn.isCalled());
    EXPECT_EQ(turn.batches, 14);
    EXPECT_EQ(turn.likeliest.code, "W9");
    EXPECT_EQ(turn.likeliest.stuckOn, core::addDays(support::stickingDay(), 56));
    EXPECT_EQ(turn.likeliest.lastBefore, core::addDays(support::stickingDay(), 49));
    EXPECT_NEAR(turn.before.rate, 0.76, 0.03);
    EXPECT_NEAR(turn.after.rate, 0.38, 0.04);
    EXPECT_LT(turn.change.high, 0);
    EXPECT_TRUE(turn.before.limits.low < turn.before.rate && turn.before.rate < turn.before.limits.high);
    EXPECT_THAT(turn.inWords, HasSubstr("From about batch W9, stuck on 2026-04-27, fewer rooted: 38 of 100 ("));
    EXPECT_THAT(turn.inWords, HasSubstr("instead of 76 of 100 ("));
    EXPECT_THAT(turn.inWords, HasSubstr("A turn is more than 99 % likely; it lies after 2026-04-20"));
}

TEST(TurningPoint, SaysMoreWhereMoreRooted) {
    std::vector<int> more = fewerFromTheNinth;
    std::ranges::reverse(more);
    EXPECT_THAT(turnOf(weekByWeek(more)).value().inWords,
                HasSubstr("From about batch W7, stuck on 2026-04-13, more rooted"));
}

TEST(TurningPoint, SaysBetweenWhichBatchesItMayLie) {
    const core::TurningPoint turn = turnOf(weekByWeek({16, 14, 16, 15, 16, 15, 11, 12, 8, 9, 8, 7, 9, 8, 7})).value();
    ASSERT_TRUE(turn.isCalled()) << turn.chance;
    EXPECT_LT(turn.earliest.stuckOn, turn.latest.stuckOn);
    EXPECT_TRUE(turn.earliest.stuckOn <= turn.likeliest.stuckOn && turn.likeliest.stuckOn <= turn.latest.stuckOn);
    EXPECT_THAT(turn.inWords, HasSubstr("it may lie anywhere from " + turn.earliest.code + " ("));
}

TEST(TurningPoint, SaysThatNoneShows) {
    const core::TurningPoint turn = turnOf(weekByWeek({15, 16, 14, 15, 17, 15, 14, 16, 15, 14})).value();
    EXPECT_LT(turn.chance, 0.2);
    EXPECT_FALSE(turn.isCalled());
    EXPECT_THAT(turn.inWords, HasSubstr("No turn shows among 10 batches: one is "));
}

TEST(TurningPoint, RulesNoneOutWhereBatchesAreFew) {
    EXPECT_THAT(turnOf(weekByWeek({15, 13, 16})).value().inWords,
                HasSubstr("No turn shows among 3 batches, nor can one be ruled out: it is "));
}

TEST(TurningPoint, IsNotSureWhereItIsNot) {
    const core::TurningPoint turn = turnOf(weekByWeek({16, 15, 17, 10, 11})).value();
    ASSERT_TRUE(turn.chance > 0.5 && turn.chance < 0.95) << turn.chance;
    EXPECT_THAT(turn.inWords, HasSubstr("There may have been a turn, but that is not certain"));
}

TEST(TurningPoint, LooksAtBatchesInOrderOfStickingWhateverTheirOrder) {
    std::vector<core::BatchRecord> batches = weekByWeek(fewerFromTheNinth);
    const double chance = turnOf(batches).value().chance;
    std::ranges::reverse(batches);
    EXPECT_EQ(turnOf(batches).value().chance, chance);
}

TEST(TurningPoint, PassesOverBatchesOfUnknownFate) {
    std::vector<core::BatchRecord> batches = weekByWeek(fewerFromTheNinth);
    batches[3].checks.clear();
    const core::TurningPoint turn = turnOf(batches).value();
    EXPECT_EQ(turn.batches, 13);
    EXPECT_EQ(turn.likeliest.code, "W9");
}

TEST(TurningPoint, IsAbsentWithFewerThanThreeBatches) {
    EXPECT_FALSE(turnOf({}));
    EXPECT_FALSE(turnOf(weekByWeek({20, 0})));
    EXPECT_TRUE(turnOf(weekByWeek({20, 0, 0})));
}

TEST(TurningPoint, LooksAmongTheLastThreeHundredOnly) {
    std::vector<int> rooted(340, 5);
    std::fill(rooted.begin() + 40, rooted.end(), 15);
    const core::TurningPoint turn = turnOf(weekByWeek(rooted)).value();
    EXPECT_EQ(turn.batches, core::mostBatchesForTurn);
    EXPECT_LT(turn.chance, 0.5) << "the turn at the 41st is out of sight";
}

TEST(SpreadOfOthers, LeavesOutThePlantByTheMethodInQuestion) {
    std::vector<core::BatchRecord> batches = weekByWeek({20, 1, 19, 0, 20});
    for (const int count : {14, 15, 14, 15})
        batches.push_back(aBatch().of(support::deutzia).stuck(20).looked(28, {.rooted = count}));
    const core::Batch& batch = batches.front().batch;
    const stats::PooledSpread all = core::pooledSpreadOf(batches, 28, 0.95);
    const stats::PooledSpread others = core::pooledSpreadOfOthers(batches, batch.plant, batch.method, 28, 0.95);
    EXPECT_EQ(all.groups, 2);
    EXPECT_EQ(others.groups, 1);
    EXPECT_LT(others.correlation, all.correlation / 2);
    EXPECT_EQ(core::pooledSpreadOfOthers(batches, batch.plant, support::mediaTray, 28, 0.95).groups, 2);
}

}  // namespace
