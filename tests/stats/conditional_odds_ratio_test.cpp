// SPDX-License-Identifier: MIT
#include "stats/two_proportions/conditional_odds_ratio.h"

#include <gtest/gtest.h>

#include <cmath>
#include <limits>
#include <stdexcept>

#include "stats/two_proportions/fisher_test.h"
#include "tests/stats/two_rates_enumeration.h"
#include "tests/support/reference_cases.h"

namespace {

class ConditionalOddsReference : public testing::TestWithParam<support::ReferenceCase> {};

TEST_P(ConditionalOddsReference, IsReproduced) {
    const support::ReferenceCase& each = GetParam();
    const stats::TwoCounts counts{each.count("x1"), each.count("n1"), each.count("x2"), each.count("n2")};
    const stats::RatioEstimate odds = stats::conditionalOddsRatio(counts, each.number("conf"));
    const stats::FisherTest fisher = stats::fisherTest(counts);
    each.expect({{"estimate", odds.estimate},
                 {"lower", odds.limits.low},
                 {"upper", odds.limits.high},
                 {"p_two_sided", fisher.twoSided},
                 {"p_less", fisher.less},
                 {"p_greater", fisher.greater}},
                {"sample_odds_ratio"});  // not shown by the program: the conditional estimate is
}
INSTANTIATE_TEST_SUITE_P(Statistics, ConditionalOddsReference,
                         testing::ValuesIn(support::referenceCases({"or_fisher"})), support::nameOfCase);

struct ConditionalSums {
    long double all{}, asMany{}, asFew{}, moment{};
};

ConditionalSums sumsAt(const stats::TwoCounts& counts, long double odds) {
    ConditionalSums sums;
    for (const auto& table :
         enumeration::tablesOf(counts.trials1, counts.trials2, counts.successes1 + counts.successes2)) {
        const long double weight = enumeration::ways(table.trials1, table.successes1) *
                                   enumeration::ways(table.trials2, table.successes2) *
                                   std::pow(odds, table.successes1);
        sums.all += weight;
        sums.moment += weight * table.successes1;
        if (table.successes1 >= counts.successes1) sums.asMany += weight;
        if (table.successes1 <= counts.successes1) sums.asFew += weight;
    }
    return sums;
}

TEST(ConditionalOddsRatio, SolvesItsThreeEquationsOnEveryTable) {
    for (const auto& table : enumeration::tablesOf(7, 9)) {
        SCOPED_TRACE(testing::Message() << table.successes1 << "/7 against " << table.successes2 << "/9");
        const auto odds = stats::conditionalOddsRatio(table, 0.9);
        if (odds.limits.low > 0) {
            const auto sums = sumsAt(table, odds.limits.low);
            EXPECT_NEAR(static_cast<double>(sums.asMany / sums.all), 0.05, 1e-11);
        }
        if (std::isfinite(odds.limits.high)) {
            const auto sums = sumsAt(table, odds.limits.high);
            EXPECT_NEAR(static_cast<double>(sums.asFew / sums.all), 0.05, 1e-11);
        }
        if (odds.estimate && *odds.estimate > 0 && std::isfinite(*odds.estimate)) {
            const auto sums = sumsAt(table, *odds.estimate);
            EXPECT_NEAR(static_cast<double>(sums.moment / sums.all), table.successes1, 1e-10);
        }
    }
}

TEST(ConditionalOddsRatio, SolvesItsEquationsOnRandomTablesOfUpToThreeHundredAnArm) {
    constexpr unsigned seed = 20260503;
    SCOPED_TRACE(testing::Message() << "seed " << seed);
    for (const auto& table : enumeration::randomTables(40, 300, seed)) {
        SCOPED_TRACE(testing::Message() << table.successes1 << "/" << table.trials1 << " against " << table.successes2
                                        << "/" << table.trials2);
        const auto odds = stats::conditionalOddsRatio(table, 0.95);
        if (odds.limits.low > 0) {
            const auto sums = sumsAt(table, odds.limits.low);
            EXPECT_NEAR(static_cast<double>(sums.asMany / sums.all), 0.025, 1e-10);
        }
        if (std::isfinite(odds.limits.high)) {
            const auto sums = sumsAt(table, odds.limits.high);
            EXPECT_NEAR(static_cast<double>(sums.asFew / sums.all), 0.025, 1e-10);
        }
    }
}

TEST(ConditionalOddsRatio, IsInvertedWhenTheArmsOrTheOutcomesSwap) {
    const auto one = stats::conditionalOddsRatio({18, 24, 9, 20}, 0.95);
    const auto arms = stats::conditionalOddsRatio({9, 20, 18, 24}, 0.95);
    const auto outcomes = stats::conditionalOddsRatio(stats::failuresOf({18, 24, 9, 20}), 0.95);
    EXPECT_NEAR(*one.estimate * *arms.estimate, 1, 1e-10);
    EXPECT_NEAR(one.limits.low * arms.limits.high, 1, 1e-10);
    EXPECT_NEAR(one.limits.low * outcomes.limits.high, 1, 1e-10);
}

TEST(ConditionalOddsRatio, IsNearerToOneThanTheSamplesOddsRatio) {
    for (const auto& table : enumeration::tablesOf(6, 6)) {
        const auto odds = stats::conditionalOddsRatio(table, 0.95);
        const double up = table.successes1 * (6.0 - table.successes2),
                     down = table.successes2 * (6.0 - table.successes1);
        if (up == 0 || down == 0) continue;
        EXPECT_LE(std::abs(std::log(*odds.estimate)), std::abs(std::log(up / down)) + 1e-12);
    }
}

TEST(ConditionalOddsRatio, SaysWhatItCannotKnow) {
    for (const stats::TwoCounts& counts : {stats::TwoCounts{0, 12, 0, 12}, {12, 12, 20, 20}, {0, 0, 4, 9}}) {
        const auto odds = stats::conditionalOddsRatio(counts, 0.95);
        EXPECT_FALSE(odds.estimate.has_value());
        EXPECT_EQ(odds.limits.low, 0);
        EXPECT_EQ(odds.limits.high, std::numeric_limits<double>::infinity());
    }
}

TEST(ConditionalOddsRatio, NearsTheLogarithmicIntervalInLargeArms) {
    const auto odds = stats::conditionalOddsRatio({60000, 100000, 50000, 100000}, 0.95);
    const double error = 1.959963984540054 * std::sqrt(1 / 6e4 + 1 / 4e4 + 1 / 5e4 + 1 / 5e4);
    EXPECT_NEAR(std::log(*odds.estimate), std::log(1.5), 1e-5);
    EXPECT_NEAR(std::log(odds.limits.low), std::log(1.5) - error, 1e-4);
    EXPECT_NEAR(std::log(odds.limits.high), std::log(1.5) + error, 1e-4);
}

TEST(ConditionalOddsRatio, RefusesImpossibleCountsAndLevels) {
    EXPECT_THROW(static_cast<void>(stats::conditionalOddsRatio({5, 4, 1, 2}, 0.95)), std::domain_error);
    EXPECT_THROW(static_cast<void>(stats::conditionalOddsRatio({1, 4, 1, 2}, 0)), std::domain_error);
}

}  // namespace
