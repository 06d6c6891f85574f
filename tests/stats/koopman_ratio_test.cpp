// SPDX-License-Identifier: MIT
#include "stats/two_proportions/koopman_ratio.h"

#include <gtest/gtest.h>

#include <cmath>
#include <limits>
#include <stdexcept>

#include "tests/stats/two_rates_enumeration.h"
#include "tests/support/reference_cases.h"

namespace {

constexpr double unlimitedRatio = std::numeric_limits<double>::infinity();

class ScoreRatioReference : public testing::TestWithParam<support::ReferenceCase> {};

TEST_P(ScoreRatioReference, IsReproduced) {
    const support::ReferenceCase& each = GetParam();
    const stats::TwoCounts counts{each.count("x1"), each.count("n1"), each.count("x2"), each.count("n2")};
    const stats::RatioEstimate ratio = each.flag("bias") ? stats::miettinenNurminenRatio(counts, each.number("conf"))
                                                         : stats::koopmanRatio(counts, each.number("conf"));
    each.expect({{"estimate", ratio.estimate}, {"lower", ratio.limits.low}, {"upper", ratio.limits.high}});
}
INSTANTIATE_TEST_SUITE_P(Statistics, ScoreRatioReference, testing::ValuesIn(support::referenceCases({"rr_score"})),
                         support::nameOfCase);

TEST(KoopmanRatio, GivesTheIntervalPrintedInKoopman1984) {
    // Koopman (1984), Biometrics 40, 513-517: 36 of 40 against 16 of 80 gives 2.94 to 7.15.
    const auto ratio = stats::koopmanRatio({36, 40, 16, 80}, 0.95);
    EXPECT_NEAR(ratio.estimate.value(), 4.5, 1e-15);
    EXPECT_NEAR(ratio.limits.low, 2.94, 0.005);
    EXPECT_NEAR(ratio.limits.high, 7.15, 0.005);
}

TEST(KoopmanRatio, HasLimitsAtWhichTheScoreTestJustRejects) {
    constexpr double z = 1.959963984540054;
    for (const auto& table : enumeration::tablesOf(7, 5)) {
        if (table.successes1 == 0 && table.successes2 == 0) continue;
        SCOPED_TRACE(testing::Message() << table.successes1 << "/7 against " << table.successes2 << "/5");
        const auto limits = stats::koopmanRatio(table, 0.95).limits;
        if (table.successes1 > 0) {
            EXPECT_NEAR(enumeration::scoreStatistic(table, 0, limits.low), z, 1e-6);
        }
        if (table.successes2 > 0) {
            EXPECT_NEAR(enumeration::scoreStatistic(table, 0, limits.high), -z, 1e-6);
        }
    }
}

TEST(KoopmanRatio, SolvesItsEquationOnRandomTablesOfUpToThreeHundredAnArm) {
    constexpr unsigned seed = 20260502;
    SCOPED_TRACE(testing::Message() << "seed " << seed);
    constexpr double z = 1.959963984540054;
    for (const auto& table : enumeration::randomTables(200, 300, seed)) {
        SCOPED_TRACE(testing::Message() << table.successes1 << "/" << table.trials1 << " against " << table.successes2
                                        << "/" << table.trials2);
        if (table.successes1 == 0 && table.successes2 == 0) continue;
        const auto limits = stats::koopmanRatio(table, 0.95).limits;
        if (table.successes1 > 0) {
            EXPECT_NEAR(enumeration::scoreStatistic(table, 0, limits.low), z, 1e-5);
        }
        if (table.successes2 > 0) {
            EXPECT_NEAR(enumeration::scoreStatistic(table, 0, limits.high), -z, 1e-5);
        }
    }
}

TEST(KoopmanRatio, IsInvertedWhenTheArmsSwap) {
    for (const auto& table : enumeration::tablesOf(8, 13)) {
        const auto one = stats::koopmanRatio(table, 0.9);
        const auto other = stats::koopmanRatio({table.successes2, table.trials2, table.successes1, table.trials1}, 0.9);
        if (std::isinf(other.limits.high)) {
            EXPECT_EQ(one.limits.low, 0);
            continue;
        }
        EXPECT_NEAR(one.limits.low * other.limits.high, 1, 1e-9) << table.successes1 << " " << table.successes2;
    }
}

TEST(KoopmanRatio, HasClosedLimitsWhenEverythingRooted) {
    constexpr double square = 1.959963984540054 * 1.959963984540054;
    const auto ratio = stats::koopmanRatio({12, 12, 20, 20}, 0.95);
    EXPECT_NEAR(ratio.limits.low, 12 / (12 + square), 1e-10);
    EXPECT_NEAR(ratio.limits.high, (20 + square) / 20, 1e-10);
}

TEST(KoopmanRatio, SaysWhatItCannotKnow) {
    const auto nothing = stats::koopmanRatio({0, 12, 0, 12}, 0.95);
    EXPECT_FALSE(nothing.estimate.has_value());
    EXPECT_EQ(nothing.limits.low, 0);
    EXPECT_EQ(nothing.limits.high, unlimitedRatio);
    EXPECT_EQ(stats::koopmanRatio({5, 12, 0, 12}, 0.95).estimate, unlimitedRatio);
    EXPECT_EQ(stats::koopmanRatio({0, 12, 5, 12}, 0.95).estimate, 0);
    EXPECT_FALSE(stats::koopmanRatio({0, 0, 5, 12}, 0.95).estimate.has_value());
}

TEST(KoopmanRatio, HoldsTheObservedRatioAlsoInLargeArms) {
    const auto ratio = stats::koopmanRatio({1, 200000, 100000, 200000}, 0.95);
    EXPECT_LT(ratio.limits.low, 1e-5);
    EXPECT_GT(ratio.limits.high, 1e-5);
    EXPECT_LT(ratio.limits.high, 1e-4);
}

TEST(KoopmanRatio, RefusesImpossibleCountsAndLevels) {
    EXPECT_THROW(static_cast<void>(stats::koopmanRatio({5, 4, 1, 2}, 0.95)), std::domain_error);
    EXPECT_THROW(static_cast<void>(stats::miettinenNurminenRatio({1, 4, 1, 2}, 1.5)), std::domain_error);
}

}  // namespace
