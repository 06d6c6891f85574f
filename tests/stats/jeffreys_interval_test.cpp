// SPDX-License-Identifier: MIT
#include "stats/proportion/jeffreys_interval.h"

#include <gtest/gtest.h>

#include <cmath>

#include "tests/stats/proportion_laws.h"
#include "tests/stats/two_rates_enumeration.h"
#include "tests/support/reference_cases.h"

namespace {

class JeffreysIntervalReference : public testing::TestWithParam<support::ReferenceCase> {};

TEST_P(JeffreysIntervalReference, IsReproduced) {
    const support::ReferenceCase& each = GetParam();
    const int successes = each.count("x"), trials = each.count("n");
    const double level = each.number("conf");
    const stats::Interval limits = stats::jeffreysInterval(successes, trials, level);
    support::ReferenceFields got{{"lower", limits.low}, {"upper", limits.high}};
    const stats::Interval tails = stats::jeffreysEqualTails(successes, trials, level);
    got["equal_tailed_lower"] = tails.low;
    got["equal_tailed_upper"] = tails.high;
    got["posterior_mean"] = (successes + 0.5) / (trials + 1);
    each.expect(got, {"estimate"});  // successes / trials needs no function
}
INSTANTIATE_TEST_SUITE_P(Statistics, JeffreysIntervalReference,
                         testing::ValuesIn(support::referenceCases({"prop_jeffreys"})), support::nameOfCase);

TEST(JeffreysInterval, SwapsItsLimitsWhenSuccessAndFailureSwap) {
    proportion_laws::expectMirrorImage(stats::jeffreysInterval);
}

TEST(JeffreysInterval, StaysInOrderAndExactAtNoneAndAll) {
    proportion_laws::expectOrderlyLimits(stats::jeffreysInterval);
}

TEST(JeffreysInterval, RefusesImpossibleCountsAndLevels) {
    proportion_laws::expectRefusals(stats::jeffreysInterval);
}

// Share of the posterior below p: Simpson's rule over asin(sqrt(p)), where the density is sin^2x cos^2(n-x), smooth at both ends.
double posteriorShareBelow(double p, int successes, int trials) {
    const auto integral = [&](double to) {
        constexpr int steps = 2000;
        double sum = 0;
        for (int i = 0; i <= steps; ++i) {
            const double angle = to * i / steps;
            const double weight = i == 0 || i == steps ? 1 : (i % 2 == 1 ? 4 : 2);
            sum +=
                weight * std::pow(std::sin(angle), 2 * successes) * std::pow(std::cos(angle), 2 * (trials - successes));
        }
        return sum * to / (3 * steps);
    };
    return integral(std::asin(std::sqrt(p))) / integral(std::acos(0.0));
}

TEST(JeffreysInterval, LeavesHalfOfTheRestOfThePosteriorInEachTail) {
    for (const int successes : {0, 1, 5, 24}) {
        const auto tails = stats::jeffreysEqualTails(successes, 24, 0.9);
        EXPECT_NEAR(posteriorShareBelow(tails.low, successes, 24), 0.05, 1e-10);
        EXPECT_NEAR(posteriorShareBelow(tails.high, successes, 24), 0.95, 1e-10);
    }
}

}  // namespace
