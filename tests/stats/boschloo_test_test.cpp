// SPDX-License-Identifier: MIT
#include "stats/two_proportions/boschloo_test.h"

#include <gtest/gtest.h>

#include <stdexcept>

#include "stats/two_proportions/fisher_test.h"
#include "tests/stats/two_rates_enumeration.h"
#include "tests/support/reference_cases.h"

namespace {

class BoschlooReference : public testing::TestWithParam<support::ReferenceCase> {};

TEST_P(BoschlooReference, IsReproduced) {
    const support::ReferenceCase& each = GetParam();
    const auto test = stats::boschlooTest({each.count("x1"), each.count("n1"), each.count("x2"), each.count("n2")});
    each.expect(
        {{"p_less", test.less}, {"p_greater", test.greater}, {"p_central", test.central}, {"p_minlike", test.minlike}});
}
INSTANTIATE_TEST_SUITE_P(Statistics, BoschlooReference, testing::ValuesIn(support::referenceCases({"boschloo"})),
                         support::nameOfCase);

TEST(BoschlooTest, AgreesWithSummingEveryTableOverAGridOfRates) {
    // The grid's largest value falls short of the supremum by less than 5e-6 in arms this small.
    for (const auto& observed : enumeration::tablesOf(5, 7)) {
        SCOPED_TRACE(testing::Message() << observed.successes1 << "/5 against " << observed.successes2 << "/7");
        const auto test = stats::boschlooTest(observed);
        const auto fisher = stats::fisherTest(observed);
        const auto nearly = [](double p, double of) { return p <= of * (1 + 1e-10); };
        const double less = enumeration::largestProbability(
            5, 7, [&](const auto& table) { return nearly(stats::fisherTest(table).less, fisher.less); });
        const double minlike = enumeration::largestProbability(
            5, 7, [&](const auto& table) { return nearly(stats::fisherTest(table).twoSided, fisher.twoSided); });
        EXPECT_NEAR(test.less, less, 5e-6);
        EXPECT_GE(test.less, less - 1e-12);
        EXPECT_NEAR(test.minlike, minlike, 5e-6);
        EXPECT_GE(test.minlike, minlike - 1e-12);
    }
}

TEST(BoschlooTest, IsNeverWeakerThanFishersTest) {
    for (const auto& table : enumeration::tablesOf(11, 17)) {
        const auto boschloo = stats::boschlooTest(table);
        const auto fisher = stats::fisherTest(table);
        EXPECT_LE(boschloo.less, fisher.less + 1e-12);
        EXPECT_LE(boschloo.greater, fisher.greater + 1e-12);
        EXPECT_LE(boschloo.minlike, fisher.twoSided + 1e-12);
    }
}

TEST(BoschlooTest, HoldsItsLevelAtEveryRate) {
    const double size = enumeration::largestProbability(
        12, 10, [](const auto& table) { return stats::boschlooTest(table).central <= 0.05; });
    EXPECT_LE(size, 0.05);
    EXPECT_GT(size, 0.03);
}

TEST(BoschlooTest, TurnsLessIntoGreaterWhenTheArmsSwap) {
    const auto one = stats::boschlooTest({15, 20, 12, 30});
    const auto other = stats::boschlooTest({12, 30, 15, 20});
    EXPECT_NEAR(one.less, other.greater, 1e-10);
    EXPECT_NEAR(one.central, other.central, 1e-10);
    EXPECT_NEAR(one.minlike, other.minlike, 1e-10);
}

TEST(BoschlooTest, IsOneWhereTheDataSayNothing) {
    for (const stats::TwoCounts& counts :
         {stats::TwoCounts{0, 12, 0, 12}, {12, 12, 20, 20}, {0, 0, 4, 9}, {0, 0, 0, 0}}) {
        EXPECT_DOUBLE_EQ(stats::boschlooTest(counts).central, 1);
        EXPECT_DOUBLE_EQ(stats::boschlooTest(counts).minlike, 1);
    }
}

TEST(BoschlooTest, RefusesImpossibleCounts) {
    EXPECT_THROW(static_cast<void>(stats::boschlooTest({5, 4, 1, 2})), std::domain_error);
}

TEST(BoschlooTest, AgreesWithSummingEveryTableOfLargeArms) {
    // scipy 1.10.1's hypergeometric and binomial laws, all tables, 801 rates equally spaced in asin(sqrt(p)) and bounded minimisation
    // around the twenty best.
    struct Large {
        stats::TwoCounts counts;
        double less, greater;
    };
    const Large table[] = {{{61, 100, 47, 100}, 0.9784004178734533, 0.025632178730904558},
                           {{210, 300, 180, 280}, 0.9319759216282546, 0.07401844880850768},
                           {{4, 300, 12, 300}, 0.033051535650519416, 0.9881227641716593}};
    for (const Large& row : table) {
        const auto test = stats::boschlooTest(row.counts);
        EXPECT_NEAR(test.less, row.less, 1e-9);
        EXPECT_NEAR(test.greater, row.greater, 1e-9);
    }
}

}  // namespace
