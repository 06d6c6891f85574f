// SPDX-License-Identifier: MIT
#include "stats/proportion/wilson_interval.h"

#include <gtest/gtest.h>

#include <cmath>

#include "tests/stats/proportion_laws.h"
#include "tests/stats/two_rates_enumeration.h"
#include "tests/support/reference_cases.h"

namespace {

class WilsonIntervalReference : public testing::TestWithParam<support::ReferenceCase> {};

TEST_P(WilsonIntervalReference, IsReproduced) {
    const support::ReferenceCase& each = GetParam();
    const int successes = each.count("x"), trials = each.count("n");
    const double level = each.number("conf");
    const stats::Interval limits = stats::wilsonInterval(successes, trials, level);
    support::ReferenceFields got{{"lower", limits.low}, {"upper", limits.high}};

    each.expect(got, {"estimate"});  // successes / trials needs no function
}
INSTANTIATE_TEST_SUITE_P(Statistics, WilsonIntervalReference,
                         testing::ValuesIn(support::referenceCases({"prop_wilson"})), support::nameOfCase);

TEST(WilsonInterval, SwapsItsLimitsWhenSuccessAndFailureSwap) {
    proportion_laws::expectMirrorImage(stats::wilsonInterval);
}

TEST(WilsonInterval, StaysInOrderAndExactAtNoneAndAll) {
    proportion_laws::expectOrderlyLimits(stats::wilsonInterval);
}

TEST(WilsonInterval, RefusesImpossibleCountsAndLevels) {
    proportion_laws::expectRefusals(stats::wilsonInterval);
}

TEST(WilsonInterval, GivesTheValuesPrintedInNewcombe1998) {
    // Newcombe (1998), Stat. Med. 17, 857-872, table I: score method, no continuity correction, 95 %.
    // Printed to four decimals, so half a unit in the fourth is all that they vouch for.
    struct Printed {
        int successes, trials;
        double low, high;
    };
    constexpr Printed table[] = {
        {81, 263, 0.2553, 0.3662}, {15, 148, 0.0624, 0.1605}, {0, 20, 0.0, 0.1611}, {1, 29, 0.0061, 0.1718}};
    for (const auto& row : table) {
        SCOPED_TRACE(testing::Message() << row.successes << " of " << row.trials);
        const auto interval = stats::wilsonInterval(row.successes, row.trials, 0.95);
        EXPECT_NEAR(interval.low, row.low, 0.00005);
        EXPECT_NEAR(interval.high, row.high, 0.00005);
    }
}

TEST(WilsonInterval, HasLimitsAtWhichTheScoreTestJustRejects) {
    constexpr double z = 1.9599639845400542355;
    for (const int successes : {1, 7, 23, 299}) {
        const auto interval = stats::wilsonInterval(successes, 300, 0.95);
        for (const long double p : {static_cast<long double>(interval.low), static_cast<long double>(interval.high)}) {
            const long double score = (successes / 300.0L - p) / std::sqrt(p * (1 - p) / 300);
            // A limit 2e-5 below 1 is known to 1e-16 only, its distance from 1 to 5e-12 relative at worst.
            EXPECT_NEAR(static_cast<double>(std::abs(score)), z, 5e-12);
        }
    }
}

TEST(WilsonInterval, CoversExactlyAsOftenAsItsCommentSays) {
    EXPECT_NEAR(proportion_laws::coverage(stats::wilsonInterval, 10, 0.3, 0.95), 0.924, 0.0005);
}

TEST(WilsonInterval, IsTheSameForWholeEffectiveTrials) {
    const auto counted = stats::wilsonInterval(18, 24, 0.95);
    const auto effective = stats::wilsonIntervalOfEffective(0.75, 24, 0.95);
    EXPECT_NEAR(effective.low, counted.low, 1e-15);
    EXPECT_NEAR(effective.high, counted.high, 1e-15);
    EXPECT_EQ(stats::wilsonIntervalOfEffective(1, 7.3, 0.95).high, 1);
    EXPECT_EQ(stats::wilsonIntervalOfEffective(0, 7.3, 0.95).low, 0);
    EXPECT_THROW(static_cast<void>(stats::wilsonIntervalOfEffective(0.5, 0, 0.95)), std::domain_error);
    EXPECT_THROW(static_cast<void>(stats::wilsonIntervalOfEffective(1.5, 10, 0.95)), std::domain_error);
}

}  // namespace
