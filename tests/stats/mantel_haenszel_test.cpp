// SPDX-License-Identifier: MIT
#include "stats/strata/mantel_haenszel.h"

#include <gtest/gtest.h>

#include <cmath>
#include <limits>
#include <stdexcept>
#include <vector>

#include "stats/strata/breslow_day_tarone_test.h"
#include "stats/strata/cochran_mantel_haenszel_test.h"
#include "tests/stats/trays_and_strata.h"
#include "tests/support/reference_cases.h"

namespace {

using stats::Stratum;
using Strata = std::vector<Stratum>;

constexpr double kInfinity = std::numeric_limits<double>::infinity();

class MantelHaenszelOddsRatio : public testing::TestWithParam<support::ReferenceCase> {};

TEST_P(MantelHaenszelOddsRatio, GivesTheReferenceValue) {
    const auto pooled = stats::mantelHaenszelOddsRatio(strataIn(GetParam()), 0.95);
    GetParam().expect({{"estimate", pooled.estimate},
                       {"lower", pooled.limits.low},
                       {"upper", pooled.limits.high},
                       {"se_log", pooled.standardErrorOfLog}});
}

INSTANTIATE_TEST_SUITE_P(Reference, MantelHaenszelOddsRatio,
                         testing::ValuesIn(support::referenceCases({"mh_odds_ratio"})), support::nameOfCase);

class MantelHaenszelDifference : public testing::TestWithParam<support::ReferenceCase> {};

TEST_P(MantelHaenszelDifference, GivesTheReferenceValue) {
    const auto pooled = stats::mantelHaenszelDifference(strataIn(GetParam()), 0.95);
    GetParam().expect({{"estimate", pooled.estimate},
                       {"lower", pooled.limits.low},
                       {"upper", pooled.limits.high},
                       {"se", pooled.standardError},
                       {"raw_lower", pooled.unclippedLimits.low},
                       {"raw_upper", pooled.unclippedLimits.high}});
}

INSTANTIATE_TEST_SUITE_P(Reference, MantelHaenszelDifference,
                         testing::ValuesIn(support::referenceCases({"mh_risk_difference"})), support::nameOfCase);

class CochranMantelHaenszel : public testing::TestWithParam<support::ReferenceCase> {};

TEST_P(CochranMantelHaenszel, GivesTheReferenceValue) {
    const auto test = stats::cochranMantelHaenszelTest(strataIn(GetParam()));
    GetParam().expect(
        {{"chi2", test.chiSquare}, {"p", test.p}, {"chi2_cc", test.correctedChiSquare}, {"p_cc", test.correctedP}});
}

INSTANTIATE_TEST_SUITE_P(Reference, CochranMantelHaenszel, testing::ValuesIn(support::referenceCases({"cmh_test"})),
                         support::nameOfCase);

class BreslowDayTarone : public testing::TestWithParam<support::ReferenceCase> {};

TEST_P(BreslowDayTarone, GivesTheReferenceValue) {
    const auto test = stats::breslowDayTaroneTest(strataIn(GetParam()));
    GetParam().expect({{"chi2", test.chiSquare},
                       {"p", test.p},
                       {"chi2_tarone", test.taroneChiSquare},
                       {"p_tarone", test.taroneP},
                       {"df", test.degreesOfFreedom}});
}

INSTANTIATE_TEST_SUITE_P(Reference, BreslowDayTarone, testing::ValuesIn(support::referenceCases({"breslow_day"})),
                         support::nameOfCase);

TEST(StrataMethods, TurnAroundWhenTheArmsSwap) {
    const Strata strata{{5, 9, 2, 8}, {3, 12, 4, 11}, {7, 7, 1, 6}};
    const Strata swapped{{2, 8, 5, 9}, {4, 11, 3, 12}, {1, 6, 7, 7}};
    const auto there = stats::mantelHaenszelOddsRatio(strata, 0.9), back = stats::mantelHaenszelOddsRatio(swapped, 0.9);
    EXPECT_NEAR(*there.estimate * *back.estimate, 1, 1e-14);
    EXPECT_NEAR(there.limits.low * back.limits.high, 1, 1e-13);
    const auto more = stats::mantelHaenszelDifference(strata, 0.9),
               less = stats::mantelHaenszelDifference(swapped, 0.9);
    EXPECT_NEAR(*more.estimate, -*less.estimate, 1e-15);
    EXPECT_NEAR(more.limits.low, -less.limits.high, 1e-14);
    EXPECT_NEAR(stats::cochranMantelHaenszelTest(strata).p, stats::cochranMantelHaenszelTest(swapped).p, 1e-14);
    EXPECT_NEAR(*stats::breslowDayTaroneTest(strata).chiSquare, *stats::breslowDayTaroneTest(swapped).chiSquare, 1e-11);
}

TEST(StrataMethods, OfOneStratumAreThePlainOddsRatioAndDifference) {
    const Strata one{{14, 20, 9, 24}};
    EXPECT_NEAR(*stats::mantelHaenszelOddsRatio(one, 0.95).estimate, 14.0 * 15 / (6 * 9), 1e-13);
    EXPECT_NEAR(*stats::mantelHaenszelDifference(one, 0.95).estimate, 14.0 / 20 - 9.0 / 24, 1e-15);
    // Robins, Breslow and Greenland's variance is then Woolf's.
    const double woolf = std::sqrt(1.0 / 14 + 1.0 / 6 + 1.0 / 9 + 1.0 / 15);
    EXPECT_NEAR(*stats::mantelHaenszelOddsRatio(one, 0.95).standardErrorOfLog, woolf, 1e-14);
    EXPECT_FALSE(stats::breslowDayTaroneTest(one).chiSquare);
}

TEST(CochranMantelHaenszelTest, HasTheMomentsOfTheHypergeometricDistribution) {
    // By enumeration of a over its support in each of two strata: the mean of D^2 / V over all pairs of tables must be
    // 1.
    const auto probability = [](int a, int n1, int n2, int t) {
        return std::exp(std::lgamma(n1 + 1.0) - std::lgamma(a + 1.0) - std::lgamma(n1 - a + 1.0) +
                        std::lgamma(n2 + 1.0) - std::lgamma(t - a + 1.0) - std::lgamma(n2 - t + a + 1.0) -
                        std::lgamma(n1 + n2 + 1.0) + std::lgamma(t + 1.0) + std::lgamma(n1 + n2 - t + 1.0));
    };
    double mean = 0, mass = 0;
    for (int a = 0; a <= 4; ++a) {
        for (int b = 1; b <= 5; ++b) {
            const Strata strata{{a, 6, 4 - a, 5}, {b, 5, 7 - b, 6}};
            const double p = probability(a, 6, 5, 4) * probability(b, 5, 6, 7);
            mean += p * *stats::cochranMantelHaenszelTest(strata).chiSquare;
            mass += p;
        }
    }
    EXPECT_NEAR(mass, 1, 1e-12);
    EXPECT_NEAR(mean, 1, 1e-12);
}

TEST(StrataMethods, AnswerWithoutAnInformativeStratum) {
    for (const Strata& strata :
         {Strata{}, Strata{{0, 0, 0, 0}}, Strata{{3, 3, 4, 4}, {0, 5, 0, 2}}, Strata{{2, 5, 0, 0}}}) {
        const auto ratio = stats::mantelHaenszelOddsRatio(strata, 0.95);
        EXPECT_FALSE(ratio.estimate);
        EXPECT_EQ(ratio.limits.low, 0);
        EXPECT_EQ(ratio.limits.high, kInfinity);
        EXPECT_FALSE(stats::cochranMantelHaenszelTest(strata).chiSquare);
        EXPECT_EQ(stats::cochranMantelHaenszelTest(strata).p, 1);
        EXPECT_FALSE(stats::breslowDayTaroneTest(strata).p);
    }
    EXPECT_FALSE(stats::mantelHaenszelDifference(Strata{{2, 5, 0, 0}}, 0.95).estimate);
    EXPECT_EQ(stats::mantelHaenszelDifference(Strata{{0, 5, 0, 2}}, 0.95).estimate, 0);
}

TEST(MantelHaenszelOddsRatio, IsZeroOrInfiniteWhenDiscordanceHasOneDirection) {
    const auto all = stats::mantelHaenszelOddsRatio(Strata{{4, 4, 0, 5}, {3, 3, 2, 4}}, 0.95);
    EXPECT_EQ(all.estimate, kInfinity);
    EXPECT_EQ(all.limits.low, 0);
    EXPECT_EQ(all.limits.high, kInfinity);
    EXPECT_FALSE(stats::breslowDayTaroneTest(Strata{{4, 4, 0, 5}, {3, 3, 2, 4}}).p);
    const auto none = stats::mantelHaenszelOddsRatio(Strata{{0, 4, 3, 5}}, 0.95);
    EXPECT_EQ(none.estimate, 0);
    EXPECT_EQ(none.limits.high, kInfinity);
}

TEST(StrataMethods, DoNotHeedStrataWithAnEmptyArm) {
    const Strata strata{{5, 9, 2, 8}, {3, 12, 4, 11}};
    Strata more = strata;
    more.push_back({0, 0, 5, 9});
    more.push_back({4, 6, 0, 0});
    EXPECT_EQ(stats::mantelHaenszelOddsRatio(strata, 0.95).estimate,
              stats::mantelHaenszelOddsRatio(more, 0.95).estimate);
    EXPECT_EQ(stats::mantelHaenszelDifference(strata, 0.95).estimate,
              stats::mantelHaenszelDifference(more, 0.95).estimate);
    EXPECT_EQ(stats::cochranMantelHaenszelTest(strata).p, stats::cochranMantelHaenszelTest(more).p);
    EXPECT_EQ(stats::breslowDayTaroneTest(more).degreesOfFreedom, 1);
}

TEST(StrataMethods, RefuseCountsThatCannotBe) {
    const Strata strata{{5, 9, 9, 8}};
    EXPECT_THROW((void)stats::mantelHaenszelOddsRatio(strata, 0.95), std::domain_error);
    EXPECT_THROW((void)stats::mantelHaenszelDifference(strata, 0.95), std::domain_error);
    EXPECT_THROW((void)stats::cochranMantelHaenszelTest(strata), std::domain_error);
    EXPECT_THROW((void)stats::breslowDayTaroneTest(strata), std::domain_error);
    EXPECT_THROW((void)stats::mantelHaenszelOddsRatio(Strata{{-1, 9, 3, 8}}, 0.95), std::domain_error);
    EXPECT_THROW((void)stats::mantelHaenszelDifference(Strata{}, 1.0), std::domain_error);
}

}  // namespace
