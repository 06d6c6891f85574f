// SPDX-License-Identifier: MIT
#include "stats/proportion/wilson_continuity_interval.h"

#include <gtest/gtest.h>

#include <cmath>

#include "tests/stats/proportion_laws.h"
#include "tests/stats/two_rates_enumeration.h"
#include "tests/support/reference_cases.h"

namespace {

class WilsonContinuityIntervalReference : public testing::TestWithParam<support::ReferenceCase> {};

TEST_P(WilsonContinuityIntervalReference, IsReproduced) {
    const support::ReferenceCase& each = GetParam();
    const int successes = each.count("x"), trials = each.count("n");
    const double level = each.number("conf");
    const stats::Interval limits = stats::wilsonContinuityInterval(successes, trials, level);
    support::ReferenceFields got{{"lower", limits.low}, {"upper", limits.high}};

    each.expect(got, {"estimate"});  // successes / trials needs no function
}
INSTANTIATE_TEST_SUITE_P(Statistics, WilsonContinuityIntervalReference,
                         testing::ValuesIn(support::referenceCases({"prop_wilson_cc"})), support::nameOfCase);

TEST(WilsonContinuityInterval, SwapsItsLimitsWhenSuccessAndFailureSwap) {
    proportion_laws::expectMirrorImage(stats::wilsonContinuityInterval);
}

TEST(WilsonContinuityInterval, StaysInOrderAndExactAtNoneAndAll) {
    proportion_laws::expectOrderlyLimits(stats::wilsonContinuityInterval);
}

TEST(WilsonContinuityInterval, RefusesImpossibleCountsAndLevels) {
    proportion_laws::expectRefusals(stats::wilsonContinuityInterval);
}

TEST(WilsonContinuityInterval, SolvesNewcombesEquation) {
    constexpr double z = 1.959963984540054;
    for (int successes = 1; successes < 24; ++successes) {
        const auto interval = stats::wilsonContinuityInterval(successes, 24, 0.95);
        for (const double p : {interval.low, interval.high})
            EXPECT_NEAR(std::abs(successes / 24.0 - p) - 1 / 48.0, z * std::sqrt(p * (1 - p) / 24), 1e-14);
    }
}

TEST(WilsonContinuityInterval, CoversAtLeastItsLevelNearlyEverywhere) {
    int below = 0;
    for (int step = 1; step < 100; ++step)
        if (proportion_laws::coverage(stats::wilsonContinuityInterval, 24, step / 100.0, 0.95) < 0.95) ++below;
    EXPECT_LE(below, 5);
}

}  // namespace
