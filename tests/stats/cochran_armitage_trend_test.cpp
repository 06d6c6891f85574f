// SPDX-License-Identifier: MIT
#include "stats/several_proportions/cochran_armitage_trend.h"

#include <gtest/gtest.h>

#include <cmath>
#include <stdexcept>
#include <vector>

#include "stats/several_proportions/chi_square_test.h"
#include "tests/stats/several_arms.h"

namespace {

using Arms = std::vector<stats::ArmCount>;
using Scores = std::vector<double>;

class CochranArmitageReference : public testing::TestWithParam<support::ReferenceCase> {};

TEST_P(CochranArmitageReference, IsReproduced) {
    const auto trend =
        stats::cochranArmitageTrend(armCountsIn(GetParam()), GetParam().inputs.at("score").get<Scores>());
    GetParam().expect({{"z", trend.z},
                       {"chi2", trend.chiSquare},
                       {"p_two_sided", trend.p},
                       {"slope", trend.slope},
                       {"chi2_n1", trend.chiSquareOfN1}});
}
INSTANTIATE_TEST_SUITE_P(Statistics, CochranArmitageReference, testing::ValuesIn(support::referenceCases({"trend_ca"})),
                         support::nameOfCase);

TEST(CochranArmitageTrend, OfTwoArmsIsTheChiSquareTest) {
    const Arms arms{{18, 30}, {12, 35}};
    EXPECT_NEAR(*stats::cochranArmitageTrend(arms, Scores{1, 7}).chiSquare, *stats::chiSquareTest(arms).chiSquare,
                1e-13);
}

TEST(CochranArmitageTrend, DoesNotCareForTheUnitOfTheScore) {
    const Arms arms{{4, 20}, {9, 20}, {13, 24}};
    const auto trend = stats::cochranArmitageTrend(arms, Scores{0, 1000, 3000});
    const auto shifted = stats::cochranArmitageTrend(arms, Scores{5, 5.001, 5.003});
    const auto turned = stats::cochranArmitageTrend(arms, Scores{0, -1000, -3000});
    EXPECT_NEAR(*trend.z, *shifted.z, 1e-9);
    EXPECT_NEAR(*shifted.slope / *trend.slope, 1e6, 1e-3);
    EXPECT_NEAR(*trend.z, -*turned.z, 1e-13);
    EXPECT_EQ(trend.p, turned.p);
    EXPECT_LE(*trend.chiSquare, *stats::chiSquareTest(arms).chiSquare);
    // Scores so large or small that their squares would not fit but for their bound.
    EXPECT_NEAR(*stats::cochranArmitageTrend(arms, Scores{0, 1e100 / 3, 1e100}).z, *trend.z, 1e-12);
    EXPECT_NEAR(*stats::cochranArmitageTrend(arms, Scores{0, 1e-100, 3e-100}).z, *trend.z, 1e-12);
}

TEST(CochranArmitageTrend, IsAbsentWhereNothingCanTrend) {
    for (const auto& trend : {stats::cochranArmitageTrend(Arms{}, Scores{}),
                              stats::cochranArmitageTrend(Arms{{0, 9}, {0, 8}}, Scores{1, 2}),
                              stats::cochranArmitageTrend(Arms{{3, 9}, {4, 8}}, Scores{2, 2}),
                              stats::cochranArmitageTrend(Arms{{3, 9}, {0, 0}}, Scores{1, 2})}) {
        EXPECT_FALSE(trend.z);
        EXPECT_FALSE(trend.slope);
        EXPECT_EQ(trend.p, 1);
    }
}

TEST(CochranArmitageTrend, RefusesScoresThatCannotBe) {
    EXPECT_THROW((void)stats::cochranArmitageTrend(Arms{{3, 9}}, Scores{}), std::domain_error);
    EXPECT_THROW((void)stats::cochranArmitageTrend(Arms{{3, 9}}, Scores{INFINITY}), std::domain_error);
    EXPECT_THROW((void)stats::cochranArmitageTrend(Arms{{3, 9}}, Scores{1e-200}), std::domain_error);
    EXPECT_THROW((void)stats::cochranArmitageTrend(Arms{{10, 9}}, Scores{1}), std::domain_error);
}

}  // namespace
