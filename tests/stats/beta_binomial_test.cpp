// SPDX-License-Identifier: MIT
#include "stats/overdispersion/beta_binomial.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <limits>
#include <stdexcept>
#include <vector>

#include "stats/numeric/seeded_random.h"
#include "stats/overdispersion/beta_binomial_likelihood.h"
#include "tests/stats/trays_and_strata.h"
#include "tests/support/accuracy_ledger.h"
#include "tests/support/reference_cases.h"

namespace {

using stats::Tray;
using Trays = std::vector<Tray>;

class BetaBinomialReference : public testing::TestWithParam<support::ReferenceCase> {};

TEST_P(BetaBinomialReference, GivesTheReferenceValue) {
    const auto fit = stats::fitBetaBinomial(traysIn(GetParam()));
    EXPECT_TRUE(fit.converged);
    EXPECT_EQ(fit.isOnBoundary, GetParam().expected.at("boundary").get<bool>());
    GetParam().expect({{"mu", fit.mean},
                       {"rho", fit.correlation},
                       {"se_mu", fit.standardErrorOfMean},
                       {"se_rho", fit.standardErrorOfCorrelation},
                       {"loglik", fit.logLikelihood},
                       {"loglik_binomial", fit.binomialLogLikelihood},
                       {"lr", fit.likelihoodRatio},
                       {"p_lr_mixture", fit.p},
                       {"p_lr_chi2_1", fit.pOnOneDegree}},
                      {"boundary"});  // a bool, compared above
}

INSTANTIATE_TEST_SUITE_P(Reference, BetaBinomialReference,
                         testing::ValuesIn(support::referenceCases({"betabinom_fit"})), support::nameOfCase);

class BetaBinomialComparison : public testing::TestWithParam<support::ReferenceCase> {};

TEST_P(BetaBinomialComparison, GivesTheReferenceValue) {
    const auto comparison = stats::compareBetaBinomial(armsIn(GetParam()));
    const auto& means = GetParam().expected.at("mu");
    if (comparison.ownMeans.correlation)
        support::prove({"fitCommonCorrelation", GetParam().source, GetParam().provenance},
                       *comparison.ownMeans.correlation, GetParam().expected.at("rho").get<double>());
    ASSERT_EQ(comparison.ownMeans.means.size(), means.size());
    for (std::size_t arm = 0; arm < means.size(); ++arm) {
        GetParam().expectNear("mu", comparison.ownMeans.means[arm], means[arm], std::to_string(arm));
    }
    GetParam().expect({{"rho", comparison.ownMeans.correlation},
                       {"loglik", comparison.ownMeans.logLikelihood},
                       {"mu_null", comparison.commonMean},
                       {"rho_null", comparison.commonCorrelation},
                       {"loglik_null", comparison.commonLogLikelihood},
                       {"lr", comparison.likelihoodRatio},
                       {"df", comparison.degreesOfFreedom},
                       {"p", comparison.p}},
                      {"mu"});  // a list, compared above
}

INSTANTIATE_TEST_SUITE_P(Reference, BetaBinomialComparison,
                         testing::ValuesIn(support::referenceCases({"betabinom_compare"})), support::nameOfCase);

// The same from gamma functions, as textbooks have it.
double logProbabilityByGammas(int y, int n, double mean, double correlation) {
    const double sum = (1 - correlation) / correlation, a = mean * sum, b = (1 - mean) * sum;
    return std::lgamma(n + 1.0) - std::lgamma(y + 1.0) - std::lgamma(n - y + 1.0) + std::lgamma(a + y) +
           std::lgamma(b + n - y) - std::lgamma(sum + n) + std::lgamma(sum) - std::lgamma(a) - std::lgamma(b);
}

TEST(BetaBinomialLogProbability, IsWhatGammaFunctionsGive) {
    for (const double correlation : {0.02, 0.1, 0.5, 0.9}) {
        for (int y = 0; y <= 17; ++y) {
            EXPECT_NEAR(stats::betaBinomialLogProbability(y, 17, 0.62, correlation),
                        logProbabilityByGammas(y, 17, 0.62, correlation), 1e-11);
        }
    }
}

TEST(BetaBinomialLogProbability, SumsToOneAndIsBinomialAtCorrelationZero) {
    for (const double correlation : {0.0, 1e-9, 0.3, 1.0}) {
        double sum = 0;
        for (int y = 0; y <= 24; ++y) sum += std::exp(stats::betaBinomialLogProbability(y, 24, 0.3, correlation));
        EXPECT_NEAR(sum, 1, 1e-12) << correlation;
    }
    EXPECT_NEAR(stats::betaBinomialLogProbability(3, 5, 0.4, 0), std::log(10 * std::pow(0.4, 3) * std::pow(0.6, 2)),
                1e-14);
    EXPECT_EQ(stats::betaBinomialLogProbability(0, 0, 0.4, 0.2), 0);
    EXPECT_EQ(stats::betaBinomialLogProbability(1, 3, 0.0, 0.2), -std::numeric_limits<double>::infinity());
    EXPECT_EQ(stats::betaBinomialLogProbability(3, 3, 1.0, 0.2), 0);
}

TEST(BetaBinomialLikelihood, HasTheDerivativesThatFiniteDifferencesShow) {
    const Trays trays{{4, 9}, {0, 5}, {12, 12}, {7, 20}, {1, 1}};
    const stats::BetaBinomialLikelihood likelihood(trays);
    for (const auto& [mean, correlation] : {std::pair{0.3, 0.05}, {0.7, 0.4}, {0.55, 0.9}}) {
        const double h = 1e-5;
        const auto at = [&](double m, double r) { return likelihood.derivatives(m, r); };
        const auto value = [&](double m, double r) { return likelihood.logLikelihood(m, r); };
        const auto d = at(mean, correlation);
        EXPECT_NEAR(d.m, (value(mean + h, correlation) - value(mean - h, correlation)) / (2 * h), 1e-5);
        EXPECT_NEAR(d.r, (value(mean, correlation + h) - value(mean, correlation - h)) / (2 * h), 1e-5);
        EXPECT_NEAR(d.mm, (at(mean + h, correlation).m - at(mean - h, correlation).m) / (2 * h), 1e-4);
        EXPECT_NEAR(d.rr, (at(mean, correlation + h).r - at(mean, correlation - h).r) / (2 * h), 1e-4);
        EXPECT_NEAR(d.mr, (at(mean, correlation + h).m - at(mean, correlation - h).m) / (2 * h), 1e-4);
    }
}

TEST(BetaBinomialFit, IsNowhereSurpassedOnAGrid) {
    stats::SeededRandom random(7);
    for (int run = 0; run < 20; ++run) {
        Trays trays;
        for (int i = 0; i < 5; ++i) trays.push_back({random.binomial(12, random.beta(3, 2)), 12});
        const auto fit = stats::fitBetaBinomial(trays);
        if (!fit.correlation || *fit.correlation == 1) continue;
        const stats::BetaBinomialLikelihood likelihood(trays);
        for (double mean = 0.01; mean < 1; mean += 0.01) {
            for (double correlation = 0; correlation < 1; correlation += 0.02) {
                ASSERT_LE(likelihood.logLikelihood(mean, correlation), fit.logLikelihood + 1e-12);
            }
        }
    }
}

TEST(BetaBinomialFit, TurnsAroundWhenSuccessAndFailureSwap) {
    const auto fit = stats::fitBetaBinomial(Trays{{9, 20}, {14, 20}, {18, 20}});
    const auto swapped = stats::fitBetaBinomial(Trays{{11, 20}, {6, 20}, {2, 20}});
    EXPECT_NEAR(*fit.mean, 1 - *swapped.mean, 1e-9);
    EXPECT_NEAR(*fit.correlation, *swapped.correlation, 1e-9);
}

TEST(BetaBinomialFit, AnswersWithoutTraysAndWithTraysOfOne) {
    EXPECT_FALSE(stats::fitBetaBinomial(Trays{}).mean);
    EXPECT_FALSE(stats::fitBetaBinomial(Trays{{0, 0}}).mean);
    const auto ones = stats::fitBetaBinomial(Trays{{1, 1}, {0, 1}, {1, 1}});
    EXPECT_NEAR(*ones.mean, 2.0 / 3, 1e-15);
    EXPECT_FALSE(ones.correlation);
    EXPECT_EQ(ones.p, 1);
}

TEST(CommonCorrelation, OfOneArmIsThatOfTheArm) {
    const std::vector<Trays> arms{{{9, 20}, {14, 20}, {18, 20}}};
    const double common = *stats::fitCommonCorrelation(arms).correlation;
    const double own = *stats::fitBetaBinomial(arms[0]).correlation;
    EXPECT_NEAR(common, own, 1e-10);
    support::prove({"fitCommonCorrelation", "one arm of three trays", "the fit of that arm"}, common, own);
}

TEST(CommonCorrelation, DoesNotHeedArmsThatSayNothing) {
    const std::vector<Trays> arms{{{9, 20}, {14, 20}, {18, 20}}, {{3, 9}, {8, 10}}};
    std::vector<Trays> more = arms;
    more.push_back({{12, 12}, {8, 8}});
    more.push_back({});
    const auto fit = stats::fitCommonCorrelation(arms), same = stats::fitCommonCorrelation(more);
    EXPECT_EQ(fit.correlation, same.correlation);
    EXPECT_EQ(fit.logLikelihood, same.logLikelihood);
    EXPECT_EQ(same.means[2], 1);
    EXPECT_FALSE(same.means[3]);
    EXPECT_EQ(stats::compareBetaBinomial(more).degreesOfFreedom, 2);
}

TEST(CommonCorrelation, ComesBackFromManySimulatedArms) {
    stats::SeededRandom random(11);
    std::vector<Trays> arms(60);
    for (Trays& arm : arms) {
        const double mean = 0.2 + 0.6 * random.uniform(), sum = 9;  // correlation 0.1
        for (int i = 0; i < 4; ++i) arm.push_back({random.binomial(20, random.beta(mean * sum, (1 - mean) * sum)), 20});
    }
    // Own means cost some of it: with four trays an arm the estimate centres on 0.069 (five runs of 400 arms).
    EXPECT_NEAR(*stats::fitCommonCorrelation(arms).correlation, 0.069, 0.03);
}

TEST(BetaBinomial, RefusesCountsThatCannotBe) {
    EXPECT_THROW((void)stats::fitBetaBinomial(Trays{{3, 2}}), std::domain_error);
    EXPECT_THROW((void)stats::fitCommonCorrelation(std::vector<Trays>{{{-1, 2}}}), std::domain_error);
    EXPECT_THROW((void)stats::betaBinomialLogProbability(1, 2, 1.1, 0), std::domain_error);
    EXPECT_THROW((void)stats::betaBinomialLogProbability(1, 2, 0.5, -0.1), std::domain_error);
}

}  // namespace
