// SPDX-License-Identifier: MIT
// Rates from counts, as points and as draws: the two ways to a probability that must agree.
#pragma once

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <vector>

#include "stats/numeric/seeded_random.h"
#include "stats/overdispersion/beta_binomial_posterior.h"

namespace simulated {

struct Counts {
    int successes{};
    int trials{};
};

inline constexpr int draws = 1'000'000;
inline constexpr std::uint64_t seedOfDraws = 20260307;

/// Jeffreys's posterior of one batch of the counts; with a correlation, of batches of 20.
inline std::vector<stats::RatePoint> ratesOf(int successes, int trials, double correlation = 0) {
    stats::PastBatches past{.batches = {}, .spread = stats::knownCorrelation(correlation), .prior = {}};
    const int batches = correlation == 0 ? 1 : trials / 20;
    for (int batch = 0; batch < batches; ++batch)
        past.batches.push_back({.successes = successes / batches, .trials = trials / batches});
    return stats::ratePosterior(past, 400);
}

struct Rates {
    double first{};
    double second{};
};

/// A million pairs from Beta(successes + 1/2, failures + 1/2).
inline std::vector<Rates> drawnRates(const Counts& first, const Counts& second) {
    stats::SeededRandom random(seedOfDraws);
    std::vector<Rates> drawn(draws);
    for (Rates& pair : drawn)
        pair = {.first = random.beta(first.successes + 0.5, first.trials - first.successes + 0.5),
                .second = random.beta(second.successes + 0.5, second.trials - second.successes + 0.5)};
    return drawn;
}

template <class Holds>
double shareOf(const std::vector<Rates>& drawn, const Holds& holds) {
    return static_cast<double>(std::ranges::count_if(drawn, holds)) / draws;
}

/// Four standard errors of a share of the draws.
inline double fourErrors(double share) {
    return 4 * std::sqrt(share * (1 - share) / draws);
}

}  // namespace simulated
