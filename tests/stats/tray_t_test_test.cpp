// SPDX-License-Identifier: MIT
#include "stats/overdispersion/tray_t_test.h"

#include <gtest/gtest.h>

#include <cmath>
#include <stdexcept>
#include <vector>

#include "stats/numeric/distribution_tails.h"
#include "stats/overdispersion/tray_interval.h"
#include "tests/stats/trays_and_strata.h"
#include "tests/support/reference_cases.h"

namespace {

using Trays = std::vector<stats::Tray>;

class TrayTTestReference : public testing::TestWithParam<support::ReferenceCase> {};

TEST_P(TrayTTestReference, GivesTheReferenceValue) {
    const auto arms = armsIn(GetParam());
    const auto test = stats::trayTTest(arms.at(0), arms.at(1));
    GetParam().expect({{"difference", test.difference},
                       {"se", test.standardError},
                       {"t", test.t},
                       {"df", test.degreesOfFreedom},
                       {"p", test.p}});
}

INSTANTIATE_TEST_SUITE_P(Reference, TrayTTestReference, testing::ValuesIn(support::referenceCases({"tray_ttest"})),
                         support::nameOfCase);

TEST(TrayTTest, HasAnIntervalWhoseEndIsWherePIsOneLessLevel) {
    const Trays first{{12, 20}, {15, 20}, {9, 18}}, second{{8, 20}, {6, 17}, {11, 20}, {7, 20}};
    const auto wide = stats::trayTTest(first, second, 0.95);
    const double level = 1 - *wide.p;
    const auto touching = stats::trayTTest(first, second, level);
    EXPECT_NEAR(std::min(std::abs(touching.limits->low), std::abs(touching.limits->high)), 0, 1e-10);
    EXPECT_NEAR((wide.limits->low + wide.limits->high) / 2, *wide.difference, 1e-12);
}

TEST(TrayTTest, ChangesItsSignWhenTheArmsSwap) {
    const Trays first{{12, 20}, {15, 20}, {9, 18}}, second{{8, 20}, {6, 17}};
    const auto there = stats::trayTTest(first, second), back = stats::trayTTest(second, first);
    EXPECT_NEAR(*there.t, -*back.t, 1e-12);
    EXPECT_NEAR(*there.p, *back.p, 1e-14);
    EXPECT_NEAR(there.limits->low, -back.limits->high, 1e-12);
}

TEST(TrayTTest, HasNoPWithoutSpreadOrWithoutTrays) {
    const auto alike = stats::trayTTest(Trays{{6, 10}, {12, 20}}, Trays{{3, 9}, {1, 3}});
    EXPECT_EQ(alike.standardError, 0);
    EXPECT_FALSE(alike.t);
    EXPECT_FALSE(alike.p);
    EXPECT_FALSE(alike.limits);
    EXPECT_FALSE(stats::trayTTest(Trays{}, Trays{{3, 9}}).difference);
    EXPECT_FALSE(stats::trayTTest(Trays{{0, 0}}, Trays{{3, 9}}).difference);
    const auto onlyOneSpreads = stats::trayTTest(Trays{{5, 10}}, Trays{{3, 9}, {4, 9}});
    EXPECT_EQ(onlyOneSpreads.degreesOfFreedom, 1);
    EXPECT_TRUE(onlyOneSpreads.p);
}

TEST(TrayTTest, RefusesCountsAndLevelsThatCannotBe) {
    EXPECT_THROW((void)stats::trayTTest(Trays{{10, 9}}, Trays{{1, 2}}), std::domain_error);
    EXPECT_THROW((void)stats::trayTTest(Trays{{1, 9}}, Trays{{1, 2}}, 1), std::domain_error);
}

TEST(DistributionTails, AgreeWithTheirClosedForms) {
    // Chi-square on 2 degrees is exponential; Student's distribution on 1 is Cauchy's, on 2 has t = x sqrt(2 / (1 -
    // x^2)).
    EXPECT_NEAR(stats::chiSquareTail(3.7, 2), std::exp(-1.85), 1e-15);
    EXPECT_NEAR(stats::chiSquareTail(3.841458820694124, 1), 0.05, 1e-14);
    EXPECT_NEAR(stats::chiSquareTail(7, 4), std::exp(-3.5) * 4.5, 1e-14);
    EXPECT_NEAR(stats::studentTwoSidedTail(1, 1), 0.5, 1e-14);
    EXPECT_NEAR(stats::studentQuantile(0.975, 2), 0.95 * std::sqrt(2 / (1 - 0.95 * 0.95)), 1e-11);
    EXPECT_EQ(stats::chiSquareTail(INFINITY, 3), 0);
    EXPECT_EQ(stats::studentTwoSidedTail(-INFINITY, 3), 0);
    EXPECT_EQ(stats::chiSquareTail(0, 1), 1);
}

TEST(DistributionTails, RefuseWhatHasNoTail) {
    EXPECT_THROW((void)stats::chiSquareTail(-1, 1), std::domain_error);
    EXPECT_THROW((void)stats::chiSquareTail(1, 0), std::domain_error);
    EXPECT_THROW((void)stats::studentTwoSidedTail(NAN, 3), std::domain_error);
    EXPECT_THROW((void)stats::studentTwoSidedTail(1, 0), std::domain_error);
    EXPECT_THROW((void)stats::studentQuantile(1, 3), std::domain_error);
    EXPECT_THROW((void)stats::studentQuantile(0.5, -1), std::domain_error);
}

TEST(TrayTTest, TakesALevelAsNearToOneAsADoubleComes) {
    const auto test = stats::trayTTest(std::vector<stats::Tray>{{3, 9}, {5, 9}},
                                       std::vector<stats::Tray>{{4, 9}, {8, 9}}, std::nextafter(1.0, 0.0));
    ASSERT_TRUE(test.limits);
    EXPECT_EQ(test.limits->low, -1);
    EXPECT_EQ(test.limits->high, 1);
    const std::vector<stats::Tray> trays{{3, 9}, {5, 9}, {8, 9}};
    const stats::TrayInterval interval = stats::trayInterval(trays, std::nextafter(1.0, 0.0));
    EXPECT_GE(interval.limits.low, 0);
    EXPECT_LE(interval.limits.high, 1);
    EXPECT_GT(interval.limits.high - interval.limits.low, 0.9);
}

}  // namespace
