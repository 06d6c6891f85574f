// SPDX-License-Identifier: MIT
// The law of a mean rate over several plants in a given mix, when batches spread more than chance. For one plant it is ratePosterior().
#pragma once

#include <span>
#include <vector>

#include "stats/overdispersion/beta_binomial_posterior.h"

namespace core {

/// One plant of a mix.
struct MixedPlant {
    std::vector<stats::Tray> batches{};
    double share{};  // of the mix, above 0
};

/// Sum of share x successes / trials. Plants without trials are left out, and the shares of the others taken to sum to 1.
[[nodiscard]] double rateOfMixAsCounted(std::span<const MixedPlant> plants);

/// One plant: its ratePosterior() with Jeffreys's prior. Several: for each correlation of `spread` a beta distribution about the rate as counted
/// that counts for as many trials as give its variance, sum of share^2 p (1 - p) x design effect / trials, each plant's p drawn towards the
/// mix's by one trial; Jeffreys's prior is added once. A prior for each plant would draw a mix of many small ones towards a half.
///
/// Domain    at least one trial; shares above 0; `spread` as stats::PastBatches.
/// Assumes   as ratePosterior(), with one correlation for all plants.
/// Accuracy  coverage simulated in tests/core/worth_coverage_test.cpp, figures in docs/costs.md.
/// Source    effective numbers: Korn and Graubard (1998), Surv. Methodol. 24, 193-201; from the definition.
[[nodiscard]] std::vector<stats::RatePoint> rateOfMix(std::span<const MixedPlant> plants,
                                                      const std::vector<stats::WeightedCorrelation>& spread);

}  // namespace core
