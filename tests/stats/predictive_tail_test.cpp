// SPDX-License-Identifier: MIT
#include "stats/surveillance/predictive_tail.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <iostream>
#include <stdexcept>
#include <vector>

#include "stats/numeric/seeded_random.h"
#include "stats/overdispersion/beta_binomial_probabilities.h"
#include "tests/support/accuracy_ledger.h"

namespace {

using Past = stats::PastBatches;

TEST(PredictiveTail, SumsWhatWasForetold) {
    const Past past{{{12, 20}, {15, 20}, {9, 20}}, stats::knownCorrelation(0.1), {}};
    const auto none = stats::predictiveTail(0, 20, past);
    // scipy.integrate.quad over scipy.stats.betabinom, SciPy 1.10.1.
    EXPECT_EQ(none.fewer, 0);
    EXPECT_NEAR(none.asFewOrFewer, 0.001255342171490474, 1e-11);
    EXPECT_NEAR(none.middle, 0.001255342171490474 / 2, 1e-11);
    support::prove({"predictiveTail", "none of 20 after three batches", "SciPy 1.10.1 betabinom and quad"},
                   none.asFewOrFewer, 0.001255342171490474);
    EXPECT_EQ(none.pastBatches, 3);
    const auto all = stats::predictiveTail(20, 20, past);
    EXPECT_NEAR(1 - all.fewer, 0.014805372025567927, 1e-10);
    EXPECT_EQ(all.asFewOrFewer, 1);
}

TEST(PredictiveTail, HasTheMeanAndTheUsualRangeOfABetaBinomial) {
    // Batches that don't differ: the law is beta-binomial with mean 19.5 / 36 and correlation 1 / 37.
    const Past past{{{8, 20}, {11, 15}}, stats::knownCorrelation(0), {}};
    const auto tail = stats::predictiveTail(7, 24, past);
    const auto law = stats::betaBinomialProbabilities(24, 19.5 / 36, 1 / 37.0);
    double below = 0;
    for (std::size_t x = 0; x < 7; ++x) below += law[x];
    EXPECT_NEAR(tail.fewer, below, 1e-12);
    EXPECT_NEAR(tail.expected, 24 * 19.5 / 36, 1e-10);
    double outsideLow = 0, outsideHigh = 0;
    for (std::size_t x = 0; x < law.size(); ++x) {
        if (static_cast<int>(x) < tail.usualFewest) outsideLow += law[x];
        if (static_cast<int>(x) > tail.usualMost) outsideHigh += law[x];
    }
    EXPECT_LE(outsideLow, 0.05);
    EXPECT_GT(outsideLow + law[static_cast<std::size_t>(tail.usualFewest)], 0.05);
    EXPECT_LE(outsideHigh, 0.05);
    EXPECT_GT(outsideHigh + law[static_cast<std::size_t>(tail.usualMost)], 0.05);
}

// A batch of the law from which rate and correlation were drawn.
stats::Tray drawnBatch(int trials, double mean, double correlation, stats::SeededRandom& random) {
    const double sum = (1 - correlation) / correlation;
    return {random.binomial(trials, random.beta(mean * sum, (1 - mean) * sum)), trials};
}

TEST(PredictiveTail, IsEvenlySpreadWhenHistoryAndBatchComeFromThePrior) {
    stats::SeededRandom random(20260217);
    std::cout << "[ seed 20260217 ]\n";
    constexpr int runs = 2000, bins = 10;
    std::vector<int> counts(bins);
    const std::vector<stats::WeightedCorrelation> spread{{0.03, 1}, {0.1, 2}, {0.25, 1}};
    for (int run = 0; run < runs; ++run) {
        const double mean = random.beta(0.5, 0.5), u = random.uniform();
        const double correlation = u < 0.25 ? 0.03 : u < 0.75 ? 0.1 : 0.25;
        const stats::Tray past = drawnBatch(12, mean, correlation, random);
        const stats::Tray batch = drawnBatch(15, mean, correlation, random);
        // One batch of the past says nothing of the correlation that the spread's law would have to learn.
        Past weighed{{past}, spread, {}};
        for (auto& each : weighed.spread) {
            const Past alone{{}, stats::knownCorrelation(each.correlation), {}};
            each.weight *= stats::predictiveProbabilities(alone, 12)[static_cast<std::size_t>(past.successes)];
        }
        const auto tail = stats::predictiveTail(batch.successes, batch.trials, weighed);
        const double place = tail.fewer + random.uniform() * (tail.asFewOrFewer - tail.fewer);
        ++counts[static_cast<std::size_t>(std::min(bins - 1, static_cast<int>(place * bins)))];
    }
    double chiSquare = 0;
    for (const int count : counts) chiSquare += std::pow(count - runs / bins, 2) / (runs / bins);
    // 9 degrees of freedom: exceeded once in ten thousand.
    EXPECT_LT(chiSquare, 33.7);
    support::proveWithin(
        {"predictiveTail", "2000 simulated batches", "even spread of the drawn tail, share at most 0.1"},
        std::abs(counts[0] / static_cast<double>(runs) - 0.1));
}

// The correlation's law when past batches are counted too: each one foretold by those before it.
std::vector<stats::WeightedCorrelation> learntFrom(const std::vector<stats::Tray>& past,
                                                   std::vector<stats::WeightedCorrelation> spread) {
    for (auto& each : spread) {
        Past before{{}, stats::knownCorrelation(each.correlation), {}};
        for (const stats::Tray& batch : past) {
            const auto law = stats::predictiveProbabilities(before, batch.trials);
            each.weight *= law[static_cast<std::size_t>(batch.successes)];
            before.batches.push_back(batch);
        }
    }
    return spread;
}

// The largest distance from an even spread over 0 to 1 (Kolmogorov and Smirnov), times the root of the number.
double distanceFromEven(std::vector<double> places) {
    std::sort(places.begin(), places.end());
    double largest = 0;
    const auto count = static_cast<double>(places.size());
    for (std::size_t i = 0; i < places.size(); ++i) {
        const auto rank = static_cast<double>(i);
        largest = std::max({largest, places[i] - rank / count, (rank + 1) / count - places[i]});
    }
    return largest * std::sqrt(count);
}

TEST(PredictiveTail, IsEvenlySpreadAfterAnyNumberOfBatchesOfAnySize) {
    stats::SeededRandom random(20261125);
    std::cout << "[ seed 20261125 ]\n";
    constexpr int runs = 4000;
    const std::vector<stats::WeightedCorrelation> usual = stats::pooledSpread({}).law;  // twelve, equally likely
    std::vector<double> places;
    for (int run = 0; run < runs; ++run) {
        const double mean = random.beta(0.5, 0.5);
        const double correlation = usual[static_cast<std::size_t>(random.below(usual.size()))].correlation;
        std::vector<stats::Tray> past;
        for (std::uint64_t left = random.below(6); left > 0; --left)
            past.push_back(drawnBatch(5 + static_cast<int>(random.below(20)), mean, correlation, random));
        const stats::Tray batch = drawnBatch(5 + static_cast<int>(random.below(20)), mean, correlation, random);
        const auto tail = stats::predictiveTail(batch.successes, batch.trials, {past, learntFrom(past, usual), {}});
        places.push_back(tail.fewer + random.uniform() * (tail.asFewOrFewer - tail.fewer));
    }
    const double distance = distanceFromEven(places);
    std::cout << "[ Kolmogorov and Smirnov's distance, times the root of " << runs << ": " << distance << " ]\n";
    // Exceeded once in a thousand.
    EXPECT_LT(distance, 1.949);
    support::proveWithin({"predictiveTail", "4000 simulated histories of 0 to 5 batches of 5 to 24",
                          "Kolmogorov and Smirnov's distance of the drawn tail from an even spread"},
                         distance / std::sqrt(runs));
}

// How often a batch like its past ones has a drawn tail of at most a twentieth, counted over its whole law.
double shareCalledPoor(double mean, double correlation, int batches, int runs, stats::SeededRandom& random) {
    const auto law = stats::betaBinomialProbabilities(20, mean, correlation);
    double share = 0;
    for (int run = 0; run < runs; ++run) {
        std::vector<std::vector<stats::Tray>> groups(1);
        for (int i = 0; i < batches; ++i) groups[0].push_back(drawnBatch(20, mean, correlation, random));
        const Past past{groups[0], stats::pooledSpread(groups).law, {}};
        const auto foretold = stats::predictiveProbabilities(past, 20);
        double below = 0;
        for (std::size_t x = 0; x < law.size(); ++x) {
            share += law[x] * std::clamp((0.05 - below) / foretold[x], 0.0, 1.0) / runs;
            below += foretold[x];
        }
    }
    return share;
}

TEST(PredictiveTail, IsHonestWithFewPastBatches) {
    stats::SeededRandom random(20260218);
    std::cout << "[ seed 20260218 ]\n";
    for (const int batches : {1, 3}) {
        double share = 0;
        for (const double mean : {0.3, 0.6, 0.9}) share += shareCalledPoor(mean, 0.1, batches, 40, random) / 3;
        // The header's table: 0.7 and 2.6 of 100.
        EXPECT_LT(share, 0.05) << batches;
    }
}

TEST(PredictiveTail, IsThePriorsWithoutPast) {
    const Past nothing{{}, stats::knownCorrelation(0), {}};
    const auto tail = stats::predictiveTail(0, 1, nothing);
    EXPECT_NEAR(tail.asFewOrFewer, 0.5, 1e-12);
    EXPECT_EQ(tail.pastBatches, 0);
    const auto empty = stats::predictiveTail(0, 0, nothing);
    EXPECT_EQ(empty.fewer, 0);
    EXPECT_EQ(empty.asFewOrFewer, 1);
    EXPECT_EQ(empty.middle, 0.5);
    EXPECT_EQ(empty.usualMost, 0);
}

TEST(PredictiveTail, GrowsWithTheCount) {
    const Past past{{{12, 20}, {15, 20}}, stats::pooledSpread({}).law, stats::ratePriorOfBand(0.5, 0.9)};
    double before = 0;
    for (int successes = 0; successes <= 20; ++successes) {
        const auto tail = stats::predictiveTail(successes, 20, past);
        EXPECT_GE(tail.fewer, before - 1e-15);
        EXPECT_GT(tail.asFewOrFewer, tail.fewer);
        before = tail.asFewOrFewer;
    }
}

TEST(PredictiveTail, RefusesWhatCannotBe) {
    const Past past{{{12, 20}}, stats::knownCorrelation(0.1), {}};
    EXPECT_THROW((void)stats::predictiveTail(3, 2, past), std::domain_error);
    EXPECT_THROW((void)stats::predictiveTail(3, 20'001, past), std::domain_error);
    EXPECT_THROW((void)stats::predictiveTail(3, 5, {{}, {}, {}}), std::domain_error);
}

}  // namespace
