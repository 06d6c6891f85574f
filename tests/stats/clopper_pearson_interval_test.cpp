// SPDX-License-Identifier: MIT
#include "stats/proportion/clopper_pearson_interval.h"

#include <gtest/gtest.h>

#include <cmath>

#include "tests/stats/proportion_laws.h"
#include "tests/stats/two_rates_enumeration.h"
#include "tests/support/reference_cases.h"

namespace {

class ClopperPearsonIntervalReference : public testing::TestWithParam<support::ReferenceCase> {};

TEST_P(ClopperPearsonIntervalReference, IsReproduced) {
    const support::ReferenceCase& each = GetParam();
    const int successes = each.count("x"), trials = each.count("n");
    const double level = each.number("conf");
    const stats::Interval limits = stats::clopperPearsonInterval(successes, trials, level);
    support::ReferenceFields got{{"lower", limits.low}, {"upper", limits.high}};

    each.expect(got, {"estimate"});  // successes / trials needs no function
}
INSTANTIATE_TEST_SUITE_P(Statistics, ClopperPearsonIntervalReference,
                         testing::ValuesIn(support::referenceCases({"prop_clopper_pearson"})), support::nameOfCase);

TEST(ClopperPearsonInterval, SwapsItsLimitsWhenSuccessAndFailureSwap) {
    proportion_laws::expectMirrorImage(stats::clopperPearsonInterval);
}

TEST(ClopperPearsonInterval, StaysInOrderAndExactAtNoneAndAll) {
    proportion_laws::expectOrderlyLimits(stats::clopperPearsonInterval);
}

TEST(ClopperPearsonInterval, RefusesImpossibleCountsAndLevels) {
    proportion_laws::expectRefusals(stats::clopperPearsonInterval);
}

TEST(ClopperPearsonInterval, LeavesExactlyHalfOfTheRestInEachTail) {
    for (const int trials : {1, 9, 24, 55}) {
        for (int successes = 0; successes <= trials; ++successes) {
            const auto interval = stats::clopperPearsonInterval(successes, trials, 0.9);
            long double asMany = 0, asFew = 0;
            for (int x = successes; x <= trials; ++x) asMany += enumeration::binomial(trials, x, interval.low);
            for (int x = 0; x <= successes; ++x) asFew += enumeration::binomial(trials, x, interval.high);
            if (successes > 0) {
                EXPECT_NEAR(static_cast<double>(asMany), 0.05, 1e-13);
            }
            if (successes < trials) {
                EXPECT_NEAR(static_cast<double>(asFew), 0.05, 1e-13);
            }
        }
    }
}

TEST(ClopperPearsonInterval, NeverCoversLessThanItsLevel) {
    for (int step = 0; step <= 200; ++step)
        EXPECT_GE(proportion_laws::coverage(stats::clopperPearsonInterval, 24, step / 200.0, 0.95), 0.95);
}

}  // namespace
