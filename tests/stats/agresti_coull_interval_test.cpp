// SPDX-License-Identifier: MIT
#include "stats/proportion/agresti_coull_interval.h"

#include <gtest/gtest.h>

#include <cmath>

#include "stats/proportion/wilson_interval.h"
#include "tests/stats/proportion_laws.h"
#include "tests/stats/two_rates_enumeration.h"
#include "tests/support/reference_cases.h"

namespace {

class AgrestiCoullIntervalReference : public testing::TestWithParam<support::ReferenceCase> {};

TEST_P(AgrestiCoullIntervalReference, IsReproduced) {
    const support::ReferenceCase& each = GetParam();
    const int successes = each.count("x"), trials = each.count("n");
    const double level = each.number("conf");
    const stats::Interval limits = stats::agrestiCoullInterval(successes, trials, level);
    support::ReferenceFields got{{"lower", limits.low}, {"upper", limits.high}};
    const stats::Interval uncut = stats::agrestiCoullUncut(successes, trials, level);
    got["raw_lower"] = uncut.low;
    got["raw_upper"] = uncut.high;
    got["centre"] = (uncut.low + uncut.high) / 2;
    each.expect(got, {"estimate"});  // successes / trials needs no function
}
INSTANTIATE_TEST_SUITE_P(Statistics, AgrestiCoullIntervalReference,
                         testing::ValuesIn(support::referenceCases({"prop_agresti_coull"})), support::nameOfCase);

TEST(AgrestiCoullInterval, SwapsItsLimitsWhenSuccessAndFailureSwap) {
    proportion_laws::expectMirrorImage(stats::agrestiCoullInterval);
}

TEST(AgrestiCoullInterval, StaysInOrderAndExactAtNoneAndAll) {
    proportion_laws::expectOrderlyLimits(stats::agrestiCoullInterval);
}

TEST(AgrestiCoullInterval, RefusesImpossibleCountsAndLevels) {
    proportion_laws::expectRefusals(stats::agrestiCoullInterval);
}

TEST(AgrestiCoullInterval, HasTheCentreOfWilsonsIntervalAndIsNeverNarrower) {
    for (int successes = 0; successes <= 24; ++successes) {
        const auto uncut = stats::agrestiCoullUncut(successes, 24, 0.95);
        const auto wilson = stats::wilsonInterval(successes, 24, 0.95);
        EXPECT_NEAR(uncut.low + uncut.high, wilson.low + wilson.high, 1e-14);
        EXPECT_GE(uncut.high - uncut.low, wilson.high - wilson.low - 1e-15);
    }
}

}  // namespace
