// SPDX-License-Identifier: MIT
#include "stats/overdispersion/rao_scott.h"

#include <gtest/gtest.h>

#include <stdexcept>
#include <vector>

#include "stats/numeric/seeded_random.h"
#include "tests/stats/trays_and_strata.h"
#include "tests/support/reference_cases.h"

namespace {

using Trays = std::vector<stats::Tray>;

class RaoScott : public testing::TestWithParam<support::ReferenceCase> {};

TEST_P(RaoScott, GivesTheReferenceValue) {
    const auto effect = stats::raoScottDesignEffect(traysIn(GetParam()));
    GetParam().expect({{"p", effect.rate},
                       {"trays", effect.trays},
                       {"n", static_cast<double>(effect.trials)},
                       {"var_ratio", effect.ratioVariance},
                       {"var_binomial", effect.binomialVariance},
                       {"deff", effect.designEffect},
                       {"n_eff", effect.effectiveTrials},
                       {"x_eff", effect.effectiveSuccesses}});
}

INSTANTIATE_TEST_SUITE_P(Reference, RaoScott, testing::ValuesIn(support::referenceCases({"rao_scott_arm"})),
                         support::nameOfCase);

TEST(DesignEffect, OfEqualTraysIsZeroAndLeavesTheEffectiveNumberOpen) {
    const auto effect = stats::raoScottDesignEffect(Trays{{3, 7}, {6, 14}, {9, 21}});
    EXPECT_EQ(effect.designEffect, 0);
    EXPECT_FALSE(effect.effectiveTrials);
}

TEST(DesignEffect, OfAllOrNothingTraysIsAboutTheirSize) {
    // Two trays of n, one full and one empty: m / (m - 1) * 2 (n / 2)^2 / (2 n)^2 = 1 / 4 over 1 / (8 n).
    EXPECT_NEAR(*stats::raoScottDesignEffect(Trays{{20, 20}, {0, 20}}).designEffect, 40, 1e-12);
}

TEST(DesignEffect, IsAboutOneForIndependentTrials) {
    stats::SeededRandom random(3);
    double sum = 0;
    constexpr int kRuns = 2000;
    for (int run = 0; run < kRuns; ++run) {
        Trays trays;
        for (int i = 0; i < 6; ++i) trays.push_back({random.binomial(20, 0.6), 20});
        sum += stats::raoScottDesignEffect(trays).designEffect.value();
    }
    EXPECT_NEAR(sum / kRuns, 1, 0.05);  // five standard errors of a chi-square on 5 degrees, divided by 5
}

TEST(DesignEffect, IsAbsentWhereItCannotBeSeen) {
    EXPECT_FALSE(stats::raoScottDesignEffect(Trays{}).rate);
    EXPECT_FALSE(stats::raoScottDesignEffect(Trays{{3, 9}, {0, 0}}).designEffect);
    EXPECT_FALSE(stats::raoScottDesignEffect(Trays{{0, 9}, {0, 4}}).designEffect);
    EXPECT_EQ(stats::raoScottDesignEffect(Trays{{3, 9}, {0, 0}}).trays, 1);
}

TEST(DesignEffect, RefusesCountsThatCannotBe) {
    EXPECT_THROW((void)stats::raoScottDesignEffect(Trays{{10, 9}}), std::domain_error);
}

}  // namespace
