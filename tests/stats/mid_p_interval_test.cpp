// SPDX-License-Identifier: MIT
#include "stats/proportion/mid_p_interval.h"

#include <gtest/gtest.h>

#include <cmath>

#include "stats/proportion/clopper_pearson_interval.h"
#include "tests/stats/proportion_laws.h"
#include "tests/support/accuracy_ledger.h"
#include "tests/support/reference_cases.h"

namespace {

class MidPIntervalReference : public testing::TestWithParam<support::ReferenceCase> {};

TEST_P(MidPIntervalReference, IsReproduced) {
    const support::ReferenceCase& each = GetParam();
    const stats::Interval limits = stats::midPInterval(each.count("x"), each.count("n"), each.number("conf"));
    each.expect({{"lower", limits.low}, {"upper", limits.high}}, {"estimate"});  // successes / trials needs no function
}
INSTANTIATE_TEST_SUITE_P(Statistics, MidPIntervalReference, testing::ValuesIn(support::referenceCases({"prop_midp"})),
                         support::nameOfCase);

TEST(MidPInterval, HasATailOfHalfAlphaAtEachLimit) {
    for (const int trials : {1, 2, 9, 24}) {
        for (int successes = 0; successes <= trials; ++successes) {
            const stats::Interval limits = stats::midPInterval(successes, trials, 0.9);
            const auto probability = [trials](int count, long double p) {
                long double product = 1;
                for (int i = 1; i <= count; ++i) product *= static_cast<long double>(trials - count + i) / i * p;
                for (int i = 0; i < trials - count; ++i) product *= 1 - p;
                return product;
            };
            long double above = probability(successes, limits.low) / 2, below = probability(successes, limits.high) / 2;
            for (int count = successes + 1; count <= trials; ++count) above += probability(count, limits.low);
            for (int count = 0; count < successes; ++count) below += probability(count, limits.high);
            const support::Proof proof{.function = "midPInterval",
                                       .source = "every count of 1, 2, 9 and 24",
                                       .independent = "the tail at each limit, summed term by term"};
            if (successes > 0) {
                EXPECT_NEAR(static_cast<double>(above), 0.05, 1e-13) << successes << " of " << trials;
                support::prove(proof, static_cast<double>(above), 0.05);
            }
            if (successes < trials) {
                EXPECT_NEAR(static_cast<double>(below), 0.05, 1e-13) << successes << " of " << trials;
                support::prove(proof, static_cast<double>(below), 0.05);
            }
        }
    }
}

TEST(MidPInterval, SwapsItsLimitsWhenSuccessAndFailureSwap) {
    proportion_laws::expectMirrorImage(stats::midPInterval);
}

TEST(MidPInterval, StaysInOrderAndExactAtNoneAndAll) {
    proportion_laws::expectOrderlyLimits(stats::midPInterval);
}

TEST(MidPInterval, LiesInsideClopperAndPearsons) {
    for (int successes = 0; successes <= 40; ++successes) {
        const stats::Interval inner = stats::midPInterval(successes, 40, 0.95);
        const stats::Interval outer = stats::clopperPearsonInterval(successes, 40, 0.95);
        EXPECT_GE(inner.low, outer.low) << successes;
        EXPECT_LE(inner.high, outer.high) << successes;
    }
}

TEST(MidPInterval, AnswersForCountsInTheMillions) {
    const stats::Interval limits = stats::midPInterval(1'000'000, 2'000'000'000, 0.95);
    // So many successes are normal: p +- z sqrt(p / n), to the skewness of about z^2 / 3 in a million.
    EXPECT_NEAR(limits.low / 5e-4, 1 - 1.959964e-3, 3e-6);
    EXPECT_NEAR(limits.high / 5e-4, 1 + 1.959964e-3, 3e-6);
}

TEST(MidPInterval, RefusesImpossibleCountsAndLevels) {
    proportion_laws::expectRefusals(stats::midPInterval);
}

}  // namespace
