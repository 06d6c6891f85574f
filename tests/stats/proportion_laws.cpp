// SPDX-License-Identifier: MIT
#include "tests/stats/proportion_laws.h"

#include <gtest/gtest.h>

#include <stdexcept>

#include "tests/stats/two_rates_enumeration.h"

namespace proportion_laws {

void expectMirrorImage(IntervalOf intervalOf) {
    for (const int trials : {1, 2, 7, 24, 300, 100000}) {
        for (int successes = 0; successes <= trials; successes += 1 + trials / 11) {
            SCOPED_TRACE(testing::Message() << successes << " of " << trials);
            const stats::Interval one = intervalOf(successes, trials, 0.95);
            const stats::Interval other = intervalOf(trials - successes, trials, 0.95);
            EXPECT_NEAR(one.low, 1 - other.high, 1e-12);
            EXPECT_NEAR(one.high, 1 - other.low, 1e-12);
        }
    }
}

void expectOrderlyLimits(IntervalOf intervalOf) {
    for (const int trials : {1, 2, 10, 24, 300}) {
        stats::Interval before{-1, -1};
        for (int successes = 0; successes <= trials; ++successes) {
            SCOPED_TRACE(testing::Message() << successes << " of " << trials);
            const stats::Interval limits = intervalOf(successes, trials, 0.95);
            const stats::Interval wider = intervalOf(successes, trials, 0.99);
            const double rate = static_cast<double>(successes) / trials;
            EXPECT_LE(0, limits.low);
            EXPECT_LE(limits.low, rate);
            EXPECT_GE(limits.high, rate);
            EXPECT_LE(limits.high, 1);
            EXPECT_GE(limits.low, before.low);
            EXPECT_GE(limits.high, before.high);
            EXPECT_LE(wider.low, limits.low);
            EXPECT_GE(wider.high, limits.high);
            before = limits;
        }
        EXPECT_EQ(intervalOf(0, trials, 0.95).low, 0);
        EXPECT_EQ(intervalOf(trials, trials, 0.95).high, 1);
        EXPECT_LT(intervalOf(0, trials, 0.95).high, 1);
    }
    EXPECT_EQ(intervalOf(0, 0, 0.95).low, 0);
    EXPECT_EQ(intervalOf(0, 0, 0.95).high, 1);
}

void expectRefusals(IntervalOf intervalOf) {
    EXPECT_THROW(static_cast<void>(intervalOf(5, 4, 0.95)), std::domain_error);
    EXPECT_THROW(static_cast<void>(intervalOf(-1, 4, 0.95)), std::domain_error);
    EXPECT_THROW(static_cast<void>(intervalOf(0, -4, 0.95)), std::domain_error);
    for (const double level : {0.0, 1.0, -0.5, 95.0})
        EXPECT_THROW(static_cast<void>(intervalOf(2, 4, level)), std::domain_error) << level;
}

double coverage(IntervalOf intervalOf, int trials, double p, double level) {
    long double sum = 0;
    for (int successes = 0; successes <= trials; ++successes) {
        const stats::Interval limits = intervalOf(successes, trials, level);
        if (limits.low <= p && p <= limits.high) sum += enumeration::binomial(trials, successes, p);
    }
    return static_cast<double>(sum);
}

}  // namespace proportion_laws
