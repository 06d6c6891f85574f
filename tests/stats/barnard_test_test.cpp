// SPDX-License-Identifier: MIT
#include "stats/two_proportions/barnard_test.h"

#include <gtest/gtest.h>

#include <cmath>
#include <stdexcept>

#include "tests/stats/two_rates_enumeration.h"
#include "tests/support/reference_cases.h"

namespace {

class BarnardReference : public testing::TestWithParam<support::ReferenceCase> {};

TEST_P(BarnardReference, IsReproduced) {
    const support::ReferenceCase& each = GetParam();
    const auto test = stats::barnardTest({each.count("x1"), each.count("n1"), each.count("x2"), each.count("n2")});
    each.expect({{"statistic", test.statistic},
                 {"p_two_sided", test.twoSided},
                 {"p_less", test.less},
                 {"p_greater", test.greater}});
}
INSTANTIATE_TEST_SUITE_P(Statistics, BarnardReference, testing::ValuesIn(support::referenceCases({"barnard"})),
                         support::nameOfCase);

TEST(BarnardTest, GivesTheValuePrintedInBarnard1945) {
    // Barnard (1945), Nature 156, 177: three of three against none of three, 1 in 64 one-sided.
    EXPECT_NEAR(stats::barnardTest({3, 3, 0, 3}).greater, 1.0 / 64, 1e-12);
}

long double pooledStatistic(const stats::TwoCounts& table) {
    const long double rate =
        static_cast<long double>(table.successes1 + table.successes2) / (table.trials1 + table.trials2);
    if (rate == 0 || rate == 1) return 0;
    return (static_cast<long double>(table.successes1) / table.trials1 -
            static_cast<long double>(table.successes2) / table.trials2) /
           std::sqrt(rate * (1 - rate) * (1.0L / table.trials1 + 1.0L / table.trials2));
}

TEST(BarnardTest, AgreesWithSummingEveryTableOverAGridOfRates) {
    // The grid's largest value falls short of the supremum by less than 5e-6 in arms this small.
    for (const auto& observed : enumeration::tablesOf(6, 5)) {
        SCOPED_TRACE(testing::Message() << observed.successes1 << "/6 against " << observed.successes2 << "/5");
        const auto test = stats::barnardTest(observed);
        const long double z = pooledStatistic(observed);
        EXPECT_NEAR(test.statistic, static_cast<double>(z), 1e-14);
        const double less = enumeration::largestProbability(
            6, 5, [&](const auto& table) { return pooledStatistic(table) <= z + 1e-12L; });
        const double greater = enumeration::largestProbability(
            6, 5, [&](const auto& table) { return pooledStatistic(table) >= z - 1e-12L; });
        const double twoSided = enumeration::largestProbability(
            6, 5, [&](const auto& table) { return std::abs(pooledStatistic(table)) >= std::abs(z) - 1e-12L; });
        EXPECT_NEAR(test.less, less, 5e-6);
        EXPECT_NEAR(test.greater, greater, 5e-6);
        EXPECT_NEAR(test.twoSided, twoSided, 5e-6);
        EXPECT_GE(test.twoSided, twoSided - 1e-12);
    }
}

TEST(BarnardTest, KeepsTiedTablesThatRoundingWouldDrop) {
    // (7, 12) and (3, 8) of 15 + 15 have the same |Z|; see the reference case barnard-vaccine. Their p values must agree.
    const auto one = stats::barnardTest({7, 15, 12, 15});
    const auto other = stats::barnardTest({3, 15, 8, 15});
    EXPECT_NEAR(one.statistic, other.statistic, 1e-14);
    EXPECT_EQ(one.twoSided, other.twoSided);
    EXPECT_EQ(one.less, other.less);
}

TEST(BarnardTest, HoldsItsLevelAtEveryRate) {
    const double size = enumeration::largestProbability(
        9, 12, [](const auto& table) { return stats::barnardTest(table).twoSided <= 0.05; });
    EXPECT_LE(size, 0.05);
    EXPECT_GT(size, 0.03);
}

TEST(BarnardTest, ChangesSignWhenTheArmsSwap) {
    const auto one = stats::barnardTest({15, 20, 12, 30});
    const auto other = stats::barnardTest({12, 30, 15, 20});
    EXPECT_EQ(one.statistic, -other.statistic);
    EXPECT_NEAR(one.less, other.greater, 1e-10);
    EXPECT_NEAR(one.twoSided, other.twoSided, 1e-10);
}

TEST(BarnardTest, IsOneWhereTheDataSayNothing) {
    for (const stats::TwoCounts& counts :
         {stats::TwoCounts{0, 12, 0, 12}, {12, 12, 20, 20}, {0, 0, 4, 9}, {6, 12, 10, 20}})
        EXPECT_DOUBLE_EQ(stats::barnardTest(counts).twoSided, 1);
}

TEST(BarnardTest, RefusesImpossibleCounts) {
    EXPECT_THROW(static_cast<void>(stats::barnardTest({5, 4, 1, 2})), std::domain_error);
    EXPECT_THROW(static_cast<void>(stats::barnardTest({0, 600000, 1, 600000})), std::domain_error);
}

TEST(BarnardTest, AgreesWithSummingEveryTableOfLargeArms) {
    // scipy 1.10.1's binomial law, all tables, 801 rates equally spaced in asin(sqrt(p)) and bounded minimisation around the twenty best.
    struct Large {
        stats::TwoCounts counts;
        double less, greater, twoSided;
    };
    const Large table[] = {{{61, 100, 47, 100}, 1, 0.025636089210933796, 0.05127217842186756},
                           {{210, 300, 180, 280}, 1, 0.09659988087804636, 0.15532600686686468},
                           {{4, 300, 12, 300}, 0.022682611142286098, 1, 0.045365222284572224}};
    for (const Large& row : table) {
        const auto test = stats::barnardTest(row.counts);
        EXPECT_NEAR(test.less, row.less, 1e-9);
        EXPECT_NEAR(test.greater, row.greater, 1e-9);
        EXPECT_NEAR(test.twoSided, row.twoSided, 1e-9);
    }
}

}  // namespace
