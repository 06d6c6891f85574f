// SPDX-License-Identifier: MIT
#include "stats/several_proportions/chi_square_test.h"

#include <gtest/gtest.h>

#include <cmath>
#include <stdexcept>
#include <vector>

#include "tests/stats/several_arms.h"
#include "tests/support/accuracy_ledger.h"

namespace {

using Arms = std::vector<stats::ArmCount>;

class ChiSquareTestReference : public testing::TestWithParam<support::ReferenceCase> {};

TEST_P(ChiSquareTestReference, IsReproduced) {
    const auto test = stats::chiSquareTest(armCountsIn(GetParam()));
    GetParam().expect({{"statistic", test.chiSquare},
                       {"df", test.degreesOfFreedom},
                       {"p", test.p},
                       {"min_expected", test.minExpected}});
}
INSTANTIATE_TEST_SUITE_P(Statistics, ChiSquareTestReference, testing::ValuesIn(support::referenceCases({"chisq_arms"})),
                         support::nameOfCase);

TEST(ChiSquareTest, OfTwoArmsIsTheSquareOfTheirDifferenceInStandardErrors) {
    const double pooled = 30.0 / 65,
                 z = (18.0 / 30 - 12.0 / 35) / std::sqrt(pooled * (1 - pooled) * (1 / 30.0 + 1 / 35.0));
    EXPECT_NEAR(*stats::chiSquareTest(Arms{{18, 30}, {12, 35}}).chiSquare, z * z, 1e-13);
}

TEST(ChiSquareTest, DoesNotCareForOrderSuccessOrEmptyArms) {
    const auto test = stats::chiSquareTest(Arms{{3, 20}, {9, 24}, {14, 22}});
    const auto shuffled = stats::chiSquareTest(Arms{{14, 22}, {0, 0}, {3, 20}, {9, 24}});
    const auto failures = stats::chiSquareTest(Arms{{17, 20}, {15, 24}, {8, 22}});
    EXPECT_NEAR(*test.chiSquare, *shuffled.chiSquare, 1e-13);
    EXPECT_NEAR(*test.chiSquare, *failures.chiSquare, 1e-13);
    EXPECT_EQ(shuffled.degreesOfFreedom, 2);
    EXPECT_NEAR(*test.minExpected, *failures.minExpected, 1e-13);
}

TEST(ChiSquareTest, OfEffectiveCountsIsThatOfWholeOnesWhereTheyAreWhole) {
    // Half the counts, half the statistic.
    const std::vector<stats::EffectiveCount> half{{1.5, 10}, {4.5, 12}, {7, 11}};
    const double whole = *stats::chiSquareTest(Arms{{3, 20}, {9, 24}, {14, 22}}).chiSquare;
    const auto test = stats::chiSquareTestOfEffective(half);
    EXPECT_NEAR(*test.chiSquare, whole / 2, 1e-13);
    support::prove({.function = "chiSquareTestOfEffective",
                    .source = "three arms at half their counts",
                    .independent = "half the statistic of the whole counts"},
                   *test.chiSquare, whole / 2);
}

TEST(ChiSquareTest, IsAbsentWithoutTwoArms) {
    for (const Arms& arms : {Arms{}, Arms{{3, 9}}, Arms{{3, 9}, {0, 0}}}) {
        const auto test = stats::chiSquareTest(arms);
        EXPECT_FALSE(test.chiSquare);
        EXPECT_FALSE(test.minExpected);
        EXPECT_EQ(test.p, 1);
        EXPECT_EQ(test.degreesOfFreedom, 0);
    }
}

TEST(ChiSquareTest, RefusesCountsThatCannotBe) {
    EXPECT_THROW((void)stats::chiSquareTest(Arms{{5, 4}}), std::domain_error);
    EXPECT_THROW((void)stats::chiSquareTest(Arms{{-1, 4}}), std::domain_error);
    const std::vector<stats::EffectiveCount> none{{std::nan(""), 4}};
    EXPECT_THROW((void)stats::chiSquareTestOfEffective(none), std::domain_error);
}

}  // namespace
