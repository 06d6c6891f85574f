// SPDX-License-Identifier: MIT
#include "core/comparison/rate_interval.h"

#include <gtest/gtest.h>

#include "core/comparison/batch_summary.h"
#include "tests/core/comparison_examples.h"

namespace {

TEST(RateInterval, IsFoundByItsWordAndNoOtherIs) {
    for (const core::RateInterval interval : core::everyRateInterval) {
        EXPECT_EQ(core::rateIntervalFrom(core::wordFor(interval)), interval);
        EXPECT_FALSE(core::nameOf(interval).empty());
    }
    EXPECT_FALSE(core::rateIntervalFrom("Wilson"));
    EXPECT_FALSE(core::rateIntervalFrom(""));
}

TEST(RateInterval, GivesTheKnownLimitsOf18Of24) {
    // Wilson: R 4.2, prop.test(18, 24, correct = FALSE); Clopper-Pearson: binom.test(18, 24).
    const core::Limits wilson = core::rateLimits(core::RateInterval::Wilson, 18, 24, 0.95);
    EXPECT_NEAR(wilson.low, 0.5510, 5e-5);
    EXPECT_NEAR(wilson.high, 0.8800, 5e-5);
    const core::Limits exact = core::rateLimits(core::RateInterval::ClopperPearson, 18, 24, 0.95);
    EXPECT_NEAR(exact.low, 0.5329, 5e-5);
    EXPECT_NEAR(exact.high, 0.9023, 5e-5);
}

TEST(RateInterval, ChosenForAComparisonIsTheArmsIntervalAsCounted) {
    for (const core::RateInterval interval : core::everyRateInterval) {
        const core::Comparison comparison = examples::compared(examples::tubsAndTrays(), {.interval = interval});
        EXPECT_EQ(comparison.interval, interval);
        for (const core::Arm& arm : comparison.arms) {
            const core::Limits expected = core::rateLimits(interval, arm.rooted, arm.assessed, comparison.level);
            EXPECT_EQ(arm.asCounted->low, expected.low);
            EXPECT_EQ(arm.asCounted->high, expected.high);
        }
    }
}

TEST(RateInterval, OfTheLogbookIsTheOneWhereNoneIsAskedFor) {
    core::Shelves shelves = support::someShelves();
    shelves.facts.interval = "jeffreys";
    shelves.facts.level = 0.8;
    const std::vector<core::BatchRecord> batches = examples::tubsAndTrays();
    const core::Result<core::Comparison> comparison =
        core::compare({.bootstrapReplicates = 0, .permutations = 0}, shelves, batches);
    ASSERT_TRUE(comparison);
    EXPECT_EQ(comparison->interval, core::RateInterval::Jeffreys);
    EXPECT_EQ(comparison->level, 0.8);
    const core::Arm& arm = comparison->arms.front();
    EXPECT_EQ(arm.asCounted->low, core::rateLimits(core::RateInterval::Jeffreys, arm.rooted, arm.assessed, 0.8).low);
}

TEST(RateInterval, OfTheLogbookIsThatOfABatchToo) {
    core::Shelves shelves = support::someShelves();
    shelves.facts.interval = "clopper_pearson";
    const std::vector<core::BatchRecord> batches = examples::tubsAndTrays();
    const core::BatchRecord& record = batches.front();
    const core::BatchSummary summary =
        core::summaryOf(record, shelves, batches, core::addDays(record.batch.stuckOn, 60));
    const core::Limits expected = core::rateLimits(core::RateInterval::ClopperPearson, summary.tally.rooted,
                                                   summary.tally.stuck, shelves.facts.level);
    EXPECT_EQ(summary.asCounted.low, expected.low);
    EXPECT_EQ(summary.asCounted.high, expected.high);
}

}  // namespace
