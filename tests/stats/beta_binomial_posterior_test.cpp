// SPDX-License-Identifier: MIT
#include "stats/overdispersion/beta_binomial_posterior.h"

#include <gtest/gtest.h>

#include <cmath>
#include <numeric>
#include <stdexcept>

#include "stats/overdispersion/beta_binomial_probabilities.h"
#include "tests/support/accuracy_ledger.h"

namespace {

using Past = stats::PastBatches;

Past pastOf(std::vector<stats::Tray> batches, double correlation) {
    return {.batches = std::move(batches), .spread = stats::knownCorrelation(correlation), .prior = {}};
}

TEST(PredictiveProbabilities, AreThoseOfAdaptiveIntegration) {
    // scipy.integrate.quad over scipy.stats.betabinom, SciPy 1.10.1.
    struct Known {
        Past past;
        int successes;
        double probability;
    };
    const std::vector<stats::Tray> three{{12, 20}, {15, 20}, {9, 20}};
    const Known table[] = {
        {pastOf(three, 0.1), 0, 0.001255342171490474},     {pastOf(three, 0.1), 5, 0.030291500385496335},
        {pastOf(three, 0.1), 13, 0.0854703553799559},      {pastOf(three, 0.1), 20, 0.014805372025567927},
        {pastOf({{3, 10}}, 0.25), 0, 0.15191157974690506}, {pastOf({{3, 10}}, 0.25), 13, 0.03585527459368574},
        {pastOf(three, 0.02), 0, 8.37620769357072e-06},    {pastOf(three, 0.02), 13, 0.1273954885568085}};
    for (const Known& each : table) {
        const double got = stats::predictiveProbabilities(each.past, 20)[static_cast<std::size_t>(each.successes)];
        EXPECT_NEAR(got, each.probability, 1e-10);
        support::prove({"predictiveProbabilities", "one and three batches", "SciPy 1.10.1 betabinom and quad"}, got,
                       each.probability);
    }
}

TEST(PredictiveProbabilities, AreBetaBinomialWhenBatchesDoNotDiffer) {
    // Jeffreys's posterior Beta(36.5, 24.5) of 36 of 60, in closed form.
    const auto got = stats::predictiveProbabilities(pastOf({{12, 20}, {15, 20}, {9, 20}}, 0), 33);
    const auto want = stats::betaBinomialProbabilities(33, 36.5 / 61, 1 / 62.0);
    for (std::size_t x = 0; x < want.size(); ++x) EXPECT_NEAR(got[x], want[x], 1e-12);
    const auto none = stats::predictiveProbabilities(pastOf({}, 0), 9);
    const auto arcsine = stats::betaBinomialProbabilities(9, 0.5, 0.5);
    for (std::size_t x = 0; x < arcsine.size(); ++x) EXPECT_NEAR(none[x], arcsine[x], 1e-12);
}

TEST(PredictiveProbabilities, AverageOverTheSpread) {
    const std::vector<stats::Tray> batches{{4, 9}, {8, 8}};
    const Past mixed{.batches = batches, .spread = {{0.05, 1}, {0.3, 3}}, .prior = {}};
    const auto law = stats::predictiveProbabilities(mixed, 12);
    const auto low = stats::predictiveProbabilities(pastOf(batches, 0.05), 12);
    const auto high = stats::predictiveProbabilities(pastOf(batches, 0.3), 12);
    for (std::size_t x = 0; x < law.size(); ++x) EXPECT_NEAR(law[x], 0.25 * low[x] + 0.75 * high[x], 1e-12);
}

TEST(RatePosterior, HasTheMeanOfItsBetaDistribution) {
    double mean = 0, weight = 0;
    for (const auto& point : stats::ratePosterior(pastOf({{7, 10}}, 0), 40)) {
        mean += point.weight * point.rate;
        weight += point.weight;
    }
    EXPECT_NEAR(weight, 1, 1e-14);
    EXPECT_NEAR(mean, 7.5 / 11, 1e-13);
    support::prove({"ratePosterior", "7 of 10", "mean of Beta(7.5, 3.5)"}, mean, 7.5 / 11);
    const Past shrunk{.batches = {{7, 10}}, .spread = stats::knownCorrelation(0), .prior = {2, 8}};
    mean = 0;
    for (const auto& point : stats::ratePosterior(shrunk, 80)) mean += point.weight * point.rate;
    EXPECT_NEAR(mean, 9.0 / 20, 1e-9);
    support::prove({"ratePosterior", "7 of 10 after Beta(2, 8)", "mean of Beta(9, 11)"}, mean, 9.0 / 20);
}

TEST(PredictiveProbabilities, WithAnotherPriorAreThoseOfItsBetaDistribution) {
    // Without spread the posterior of 3 of 10 is Beta(3.7, 10.3), and its count of two more is known by hand.
    const Past past{.batches = {{3, 10}}, .spread = stats::knownCorrelation(0), .prior = {0.7, 3.3}};
    const auto law = stats::predictiveProbabilities(past, 2);
    const double a = 3.7, b = 10.3, sum = a + b;
    const double both = a * (a + 1) / (sum * (sum + 1)), none = b * (b + 1) / (sum * (sum + 1));
    EXPECT_NEAR(law[0], none, 1e-8);
    EXPECT_NEAR(law[1], 1 - none - both, 1e-8);
    EXPECT_NEAR(law[2], both, 1e-8);
    support::prove({"predictiveProbabilities", "3 of 10 after Beta(0.7, 3.3)", "beta-binomial by hand"}, law[2], both);
}

TEST(RatePriorOfBand, HasTheMiddleOfTheBandAndLittleWeight) {
    const auto prior = stats::ratePriorOfBand(0.6, 0.9);
    EXPECT_NEAR(prior.successes / (prior.successes + prior.failures), 0.75, 1e-12);
    EXPECT_LE(prior.successes + prior.failures, 10 + 1e-12);
    // Wide enough to stay under the cap: standard deviation 0.9 / 3.29 of Beta(a, b) with mean 0.5.
    const auto wide = stats::ratePriorOfBand(0.05, 0.95);
    const double sum = wide.successes + wide.failures, variance = 0.25 / (sum + 1);
    EXPECT_NEAR(std::sqrt(variance), 0.9 / 3.29, 1e-12);
    support::prove({"ratePriorOfBand", "0.05 to 0.95", "standard deviation of the beta distribution"},
                   std::sqrt(variance), 0.9 / 3.29);
    for (const auto& [low, high] : {std::pair{0.0, 0.0}, {1.0, 1.0}, {0.0, 1.0}, {0.0, 0.01}}) {
        const auto each = stats::ratePriorOfBand(low, high);
        EXPECT_GE(each.successes, 0.5);
        EXPECT_GE(each.failures, 0.5);
    }
}

TEST(PastBatches, AreRefusedWhenTheyCannotBe) {
    const Past good = pastOf({{3, 5}}, 0.1);
    const auto refuses = [&good](auto change) {
        Past bad = good;
        change(bad);
        EXPECT_THROW((void)stats::predictiveProbabilities(bad, 4), std::domain_error);
        EXPECT_THROW((void)stats::ratePosterior(bad, 4), std::domain_error);
    };
    refuses([](Past& past) { past.batches[0].successes = 6; });
    refuses([](Past& past) { past.spread.clear(); });
    refuses([](Past& past) { past.spread[0].correlation = 1; });
    refuses([](Past& past) { past.spread[0].weight = 0; });
    refuses([](Past& past) { past.prior.failures = 0.4; });
    refuses([](Past& past) { past.prior.successes = INFINITY; });
    EXPECT_THROW((void)stats::predictiveProbabilities(good, -1), std::domain_error);
    EXPECT_THROW((void)stats::predictiveProbabilities(good, 20'001), std::domain_error);
    EXPECT_THROW((void)stats::ratePosterior(good, 0), std::domain_error);
    EXPECT_THROW((void)stats::ratePriorOfBand(0.6, 0.5), std::domain_error);
    EXPECT_THROW((void)stats::ratePriorOfBand(0.6, 0.7, 0), std::domain_error);
}

}  // namespace
