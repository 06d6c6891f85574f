// SPDX-License-Identifier: MIT
#include "stats/two_proportions/miettinen_nurminen_difference.h"

#include <gtest/gtest.h>

#include <cmath>
#include <stdexcept>

#include "tests/stats/two_rates_enumeration.h"
#include "tests/support/reference_cases.h"

namespace {

class ScoreDifferenceReference : public testing::TestWithParam<support::ReferenceCase> {};

TEST_P(ScoreDifferenceReference, IsReproduced) {
    const support::ReferenceCase& each = GetParam();
    const stats::TwoCounts counts{each.count("x1"), each.count("n1"), each.count("x2"), each.count("n2")};
    const bool isUnbiased = each.inputs.value("bias", true);
    const stats::Interval limits = isUnbiased ? stats::miettinenNurminenDifference(counts, each.number("conf"))
                                              : stats::meeDifference(counts, each.number("conf"));
    each.expect({{"lower", limits.low}, {"upper", limits.high}}, {"estimate"});  // p1 - p2 needs no function
}
INSTANTIATE_TEST_SUITE_P(Statistics, ScoreDifferenceReference,
                         testing::ValuesIn(support::referenceCases({"diff_score"})), support::nameOfCase);

TEST(MiettinenNurminenDifference, GivesTheValuesPrintedInNewcombe1998) {
    // Newcombe (1998), Stat. Med. 17, 873-890, table II, method 9: contrasts (a) 56/70 - 48/80 and (d) 5/56 - 0/29.
    const auto a = stats::miettinenNurminenDifference({56, 70, 48, 80}, 0.95);
    EXPECT_NEAR(a.low, 0.0528, 0.00005);
    EXPECT_NEAR(a.high, 0.3382, 0.00005);
    const auto d = stats::miettinenNurminenDifference({5, 56, 0, 29}, 0.95);
    EXPECT_NEAR(d.low, -0.0326, 0.00005);
    EXPECT_NEAR(d.high, 0.1933, 0.00005);
}

TEST(MiettinenNurminenDifference, HasLimitsAtWhichTheScoreTestJustRejects) {
    constexpr double z = 1.6448536269514722;
    for (const auto& table : enumeration::tablesOf(7, 5)) {
        SCOPED_TRACE(testing::Message() << table.successes1 << "/7 against " << table.successes2 << "/5");
        const auto limits = stats::miettinenNurminenDifference(table, 0.9);
        const double toMee = std::sqrt(12.0 / 11.0);
        if (limits.low > -1) {
            EXPECT_NEAR(enumeration::scoreStatistic(table, limits.low, 1), z * toMee, 1e-6);
        }
        if (limits.high < 1) {
            EXPECT_NEAR(enumeration::scoreStatistic(table, limits.high, 1), -z * toMee, 1e-6);
        }
    }
}

TEST(MiettinenNurminenDifference, SolvesItsEquationOnRandomTablesOfUpToThreeHundredAnArm) {
    constexpr unsigned seed = 20260501;
    SCOPED_TRACE(testing::Message() << "seed " << seed);
    constexpr double z = 1.959963984540054;
    for (const auto& table : enumeration::randomTables(200, 300, seed)) {
        SCOPED_TRACE(testing::Message() << table.successes1 << "/" << table.trials1 << " against " << table.successes2
                                        << "/" << table.trials2);
        const auto limits = stats::miettinenNurminenDifference(table, 0.95);
        const double all = table.trials1 + table.trials2, toMee = std::sqrt(all / (all - 1));
        if (limits.low > -1) {
            EXPECT_NEAR(enumeration::scoreStatistic(table, limits.low, 1), z * toMee, 1e-5);
        }
        if (limits.high < 1) {
            EXPECT_NEAR(enumeration::scoreStatistic(table, limits.high, 1), -z * toMee, 1e-5);
        }
    }
}

TEST(MiettinenNurminenDifference, ChangesSignWhenTheArmsOrTheOutcomesSwap) {
    for (const auto& table : enumeration::tablesOf(6, 11)) {
        const auto one = stats::miettinenNurminenDifference(table, 0.95);
        const auto arms = stats::miettinenNurminenDifference(
            {table.successes2, table.trials2, table.successes1, table.trials1}, 0.95);
        const auto outcomes = stats::miettinenNurminenDifference(stats::failuresOf(table), 0.95);
        EXPECT_NEAR(one.low, -arms.high, 1e-12);
        EXPECT_NEAR(one.high, -arms.low, 1e-12);
        EXPECT_NEAR(one.low, -outcomes.high, 1e-12);
        EXPECT_NEAR(one.high, -outcomes.low, 1e-12);
    }
}

TEST(MiettinenNurminenDifference, IsWiderThanMeesAndNearsTheTextbookIntervalInLargeArms) {
    const auto unbiased = stats::miettinenNurminenDifference({9, 24, 18, 24}, 0.95);
    const auto mee = stats::meeDifference({9, 24, 18, 24}, 0.95);
    EXPECT_LT(unbiased.low, mee.low);
    EXPECT_GT(unbiased.high, mee.high);
    const auto large = stats::miettinenNurminenDifference({60000, 100000, 50000, 100000}, 0.95);
    const double error = 1.959963984540054 * std::sqrt(0.6 * 0.4 / 1e5 + 0.25 / 1e5);
    EXPECT_NEAR(large.low, 0.1 - error, 5e-6);
    EXPECT_NEAR(large.high, 0.1 + error, 5e-6);
}

TEST(MiettinenNurminenDifference, IsExactlyMinusOneOrOneOnlyWhereTheArmsAreOpposite) {
    for (const auto& table : enumeration::tablesOf(4, 3)) {
        const auto limits = stats::miettinenNurminenDifference(table, 0.999);
        EXPECT_EQ(limits.low == -1, table.successes1 == 0 && table.successes2 == 3);
        EXPECT_EQ(limits.high == 1, table.successes1 == 4 && table.successes2 == 0);
    }
    EXPECT_EQ(stats::miettinenNurminenDifference({0, 0, 4, 9}, 0.95).low, -1);
    EXPECT_EQ(stats::miettinenNurminenDifference({0, 0, 4, 9}, 0.95).high, 1);
}

TEST(MiettinenNurminenDifference, RefusesImpossibleCountsAndLevels) {
    EXPECT_THROW(static_cast<void>(stats::miettinenNurminenDifference({5, 4, 1, 2}, 0.95)), std::domain_error);
    EXPECT_THROW(static_cast<void>(stats::miettinenNurminenDifference({1, 4, 3, 2}, 0.95)), std::domain_error);
    EXPECT_THROW(static_cast<void>(stats::meeDifference({1, 4, 1, 2}, 0)), std::domain_error);
}

}  // namespace
