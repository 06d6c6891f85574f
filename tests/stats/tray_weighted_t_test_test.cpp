// SPDX-License-Identifier: MIT
#include "stats/overdispersion/tray_weighted_t_test.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <stdexcept>
#include <vector>

#include "stats/numeric/seeded_random.h"
#include "tests/support/accuracy_ledger.h"

namespace {

using Trays = std::vector<stats::Tray>;

const Trays some{{12, 20}, {15, 26}, {9, 9}}, others{{8, 30}, {6, 17}, {11, 20}, {1, 7}};

constexpr support::Proof weighted{
    .function = "trayWeightedTTest",
    .source = "invented trays of unequal size",
    .independent = "R 4.2.2 lm() with weights; the same by NumPy 1.24.2 and SciPy 1.10.1"};
constexpr support::Proof guarded{.function = "trayGuardedTTest",
                                 .source = "invented trays of unequal size",
                                 .independent = "R 4.2.2 lm() with weights, twice"};

void expectNear(const support::Proof& proof, double got, double want) {
    support::prove(proof, got, want);
    EXPECT_NEAR(got, want, 1e-9);
}

TEST(TrayWeightedTTest, GivesTheWeightedRegressionOfAnotherProgram) {
    // R: lm(y ~ arm, weights = n / (1 + (n - 1) * r)), confint().
    struct Fitted {
        double correlation, difference, error, t, p, low, high;
    };
    constexpr Fitted table[] = {
        {0, 0.30319410319410312, 0.12835371744667237, 2.36217625188824298, 0.06457637789045853, -0.026749631536293172,
         0.6331378379244997},
        {0.1, 0.35045365887982766, 0.14445805900655170, 2.42598897763075527, 0.05967499405554644, -0.02088760375503418,
         0.7217949215146897},
        {1, 0.3975247791424261, 0.1531800923619522, 2.5951464907274446, 0.0485335762778528, 0.0037628159858238974,
         0.7912867422990286},
    };
    for (const Fitted& row : table) {
        SCOPED_TRACE(row.correlation);
        const auto test = stats::trayWeightedTTest(some, others, row.correlation);
        expectNear(weighted, *test.difference, row.difference);
        expectNear(weighted, *test.standardError, row.error);
        expectNear(weighted, *test.t, row.t);
        expectNear(weighted, *test.p, row.p);
        expectNear(weighted, test.limits->low, row.low);
        expectNear(weighted, test.limits->high, row.high);
        EXPECT_EQ(test.degreesOfFreedom, 5);
    }
}

TEST(TrayWeightedTTest, CountsEachTrayOnceAtCorrelationOne) {
    const auto plain = stats::trayTTest(some, others), test = stats::trayWeightedTTest(some, others, 1);
    EXPECT_NEAR(*plain.p, *test.p, 1e-14);
    EXPECT_NEAR(plain.limits->low, test.limits->low, 1e-14);
}

TEST(TrayWeightedTTest, ComparesPooledRatesAtCorrelationNought) {
    EXPECT_NEAR(*stats::trayWeightedTTest(some, others, 0).difference, 36.0 / 55 - 26.0 / 74, 1e-15);
}

TEST(TrayGuardedTTest, IsTheMoreCautiousOfTwoWeighings) {
    const auto test = stats::trayGuardedTTest(some, others);
    expectNear(guarded, *test.p, 0.06457637789045853);
    expectNear(guarded, *test.difference, 0.30319410319410312);
    expectNear(guarded, test.limits->low, -0.026749631536293172);
    expectNear(guarded, test.limits->high, 0.7217949215146897);
}

TEST(TrayGuardedTTest, IsTheTTestWhereTraysAreOfOneSize) {
    const Trays first{{12, 20}, {15, 20}, {9, 20}}, second{{8, 20}, {6, 20}, {11, 20}, {7, 20}};
    const auto plain = stats::trayTTest(first, second), test = stats::trayGuardedTTest(first, second);
    EXPECT_NEAR(*plain.p, *test.p, 1e-14);
    EXPECT_NEAR(*plain.difference, *test.difference, 1e-15);
    EXPECT_NEAR(plain.limits->high, test.limits->high, 1e-14);
}

TEST(TrayGuardedTTest, LeavesOutNoDifferenceExactlyWherePIsBelowOneLessLevel) {
    constexpr std::uint64_t seed = 20260301;
    SCOPED_TRACE(testing::Message() << "seed " << seed);
    stats::SeededRandom random(seed);
    const auto arm = [&random] {
        Trays trays(2 + random.below(6));
        for (stats::Tray& tray : trays) {
            tray.trials = 1 + static_cast<int>(random.below(30));
            tray.successes = random.binomial(tray.trials, random.uniform());
        }
        return trays;
    };
    int decided = 0;
    for (int season = 0; season < 20'000; ++season) {
        const Trays first = arm(), second = arm();
        const auto test = stats::trayGuardedTTest(first, second), back = stats::trayGuardedTTest(second, first);
        ASSERT_TRUE(test.difference);
        ASSERT_EQ(test.p.has_value(), test.limits.has_value());
        if (!test.p) continue;
        ASSERT_TRUE(*test.p >= 0 && *test.p <= 1);
        ASSERT_NEAR(*test.p, *back.p, 1e-12);
        ASSERT_LE(test.limits->low, *test.difference);
        ASSERT_GE(test.limits->high, *test.difference);
        ASSERT_EQ(*test.p<0.05, test.limits->low> 0 || test.limits->high < 0);
        if (*test.p < 0.05) ++decided;
    }
    EXPECT_GT(decided, 500);
}

TEST(TrayGuardedTTest, SaysNothingWhereTheTwoWeighingsDisagree) {
    // One huge tray that did well among small ones that did badly: of all cuttings the first arm is ahead, of trays the second.
    Trays first{{600, 1000}}, second;
    for (int tray = 0; tray < 8; ++tray) {
        first.push_back({2, 20});
        second.push_back({8 + tray % 3, 20});
    }
    EXPECT_LT(*stats::trayTTest(first, second).p, 0.01);
    EXPECT_GT(*stats::trayWeightedTTest(first, second, 0).difference, 0.08);
    EXPECT_LT(*stats::trayWeightedTTest(first, second, 0.1).difference, -0.1);
    EXPECT_EQ(stats::trayGuardedTTest(first, second).p, 1);
}

TEST(TrayGuardedTTest, HasNoPWithoutSpreadOrWithoutTrays) {
    const auto alike = stats::trayGuardedTTest(Trays{{6, 10}, {12, 20}}, Trays{{3, 9}, {1, 3}});
    EXPECT_EQ(alike.standardError, 0);
    EXPECT_FALSE(alike.p);
    EXPECT_FALSE(alike.limits);
    EXPECT_FALSE(stats::trayGuardedTTest(Trays{}, Trays{{3, 9}}).difference);
    EXPECT_FALSE(stats::trayGuardedTTest(Trays{{0, 0}}, Trays{{3, 9}}).difference);
    EXPECT_FALSE(stats::trayGuardedTTest(Trays{{2, 9}}, Trays{{3, 9}}).p);
}

TEST(TrayGuardedTTest, RefusesWhatCannotBe) {
    EXPECT_THROW((void)stats::trayGuardedTTest(Trays{{10, 9}}, Trays{{1, 2}}), std::domain_error);
    EXPECT_THROW((void)stats::trayGuardedTTest(Trays{{1, 9}}, Trays{{1, 2}}, 1), std::domain_error);
    EXPECT_THROW((void)stats::trayWeightedTTest(Trays{{1, 9}}, Trays{{3, 2}}, 0.1), std::domain_error);
    EXPECT_THROW((void)stats::trayWeightedTTest(Trays{{1, 9}}, Trays{{1, 2}}, -0.1), std::domain_error);
    EXPECT_THROW((void)stats::trayWeightedTTest(Trays{{1, 9}}, Trays{{1, 2}}, NAN), std::domain_error);
}

}  // namespace
