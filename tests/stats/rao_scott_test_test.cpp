// SPDX-License-Identifier: MIT
#include <gtest/gtest.h>

#include <stdexcept>
#include <vector>

#include "stats/overdispersion/rao_scott.h"
#include "stats/several_proportions/chi_square_test.h"
#include "tests/stats/trays_and_strata.h"
#include "tests/support/reference_cases.h"

namespace {

using ArmsOfTrays = std::vector<std::vector<stats::Tray>>;

class RaoScottTestReference : public testing::TestWithParam<support::ReferenceCase> {};

TEST_P(RaoScottTestReference, IsReproduced) {
    const support::ReferenceCase& each = GetParam();
    const auto test = stats::raoScottTest(armsIn(each));
    for (std::size_t i = 0; i < test.arms.size(); ++i) {
        each.expectNear("deff", test.arms[i].designEffect, each.expected.at("deff").at(i), std::to_string(i));
        each.expectNear("n_eff", test.arms[i].effectiveTrials, each.expected.at("n_eff").at(i), std::to_string(i));
    }
    each.expect({{"chi2", test.chiSquare},
                 {"df", test.degreesOfFreedom},
                 {"p", test.p},
                 {"pooled_deff", test.pooledDesignEffect},
                 {"chi2_pooled_deff", test.pooledChiSquare},
                 {"p_pooled_deff", test.pooledP}},
                {"deff", "n_eff"});  // lists, compared above
}
INSTANTIATE_TEST_SUITE_P(Statistics, RaoScottTestReference,
                         testing::ValuesIn(support::referenceCases({"rao_scott_test"})), support::nameOfCase);

TEST(RaoScottTest, IsTheChiSquareTestWhereEachDesignEffectIsOne) {
    // Two trays of n that differ by 2 d: deff = 2 * 2 d^2 / (2 n)^2 over p (1 - p) / (2 n); here p = 1/2, n = 8, d = 2.
    const ArmsOfTrays arms{{{6, 8}, {2, 8}}, {{6, 8}, {2, 8}}};
    const double effect = *stats::raoScottTest(arms).arms[0].designEffect;
    EXPECT_NEAR(effect, 4, 1e-14);
    const ArmsOfTrays other{{{6, 8}, {2, 8}}, {{7, 8}, {3, 8}}};
    const auto test = stats::raoScottTest(other);
    const std::vector<stats::ArmCount> counts{{8, 16}, {10, 16}};
    EXPECT_NEAR(*test.pooledChiSquare * *test.pooledDesignEffect, *stats::chiSquareTest(counts).chiSquare, 1e-13);
}

TEST(RaoScottTest, ChangesNothingForEmptyArmsAndTrays) {
    const ArmsOfTrays arms{{{15, 20}, {17, 20}, {12, 18}}, {{9, 20}, {12, 20}, {7, 16}}};
    const ArmsOfTrays padded{{{15, 20}, {17, 20}, {0, 0}, {12, 18}}, {}, {{9, 20}, {12, 20}, {7, 16}}};
    EXPECT_EQ(stats::raoScottTest(arms).chiSquare, stats::raoScottTest(padded).chiSquare);
    EXPECT_EQ(stats::raoScottTest(arms).pooledP, stats::raoScottTest(padded).pooledP);
    EXPECT_EQ(stats::raoScottTest(padded).degreesOfFreedom, 1);
    EXPECT_EQ(stats::raoScottTest(padded).arms.size(), 3U);
}

TEST(RaoScottTest, IsAbsentWhereAnArmHasNoDesignEffect) {
    const auto oneTray = stats::raoScottTest(ArmsOfTrays{{{5, 9}}, {{3, 9}, {6, 9}}});
    EXPECT_FALSE(oneTray.chiSquare);
    EXPECT_FALSE(oneTray.p);
    EXPECT_FALSE(oneTray.pooledDesignEffect);
    EXPECT_FALSE(oneTray.pooledP);
    EXPECT_EQ(oneTray.degreesOfFreedom, 1);
    // Equal trays in one arm: no effective number there, but the arms have a design effect between them.
    const auto alike = stats::raoScottTest(ArmsOfTrays{{{5, 10}, {5, 10}}, {{3, 10}, {6, 10}}});
    EXPECT_FALSE(alike.chiSquare);
    EXPECT_TRUE(alike.pooledP);
    const auto allAlike = stats::raoScottTest(ArmsOfTrays{{{5, 10}, {5, 10}}, {{3, 10}, {3, 10}}});
    EXPECT_EQ(allAlike.pooledDesignEffect, 0);
    EXPECT_FALSE(allAlike.pooledChiSquare);
    EXPECT_FALSE(stats::raoScottTest(ArmsOfTrays{}).chiSquare);
    EXPECT_EQ(stats::raoScottTest(ArmsOfTrays{{{5, 9}, {4, 9}}}).degreesOfFreedom, 0);
}

TEST(RaoScottTest, RefusesCountsThatCannotBe) {
    EXPECT_THROW((void)stats::raoScottTest(ArmsOfTrays{{{5, 4}}}), std::domain_error);
}

}  // namespace
