// SPDX-License-Identifier: MIT
#include "core/comparison/rate_interval.h"

#include <gtest/gtest.h>

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

}  // namespace
