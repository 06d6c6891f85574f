// SPDX-License-Identifier: MIT
// What past batches of a plant in a method say about its rate, and about the count of the next batch, when batches
// spread more than chance. Plans (planning/predictive_count.h) and alarms (surveillance/predictive_tail.h) rest on it.
#pragma once

#include <span>
#include <string_view>
#include <vector>

#include "stats/overdispersion/intraclass_correlation.h"
#include "stats/overdispersion/tray.h"

namespace stats {

/// A beta distribution of the mean rate before any record is seen. The default is Jeffreys's.
struct RatePrior {
    double successes{0.5};
    double failures{0.5};
};

/// A plant's reference band, low to high, as a prior: its middle is the mean, and it holds about nine tenths (3.29
/// standard deviations wide), but it never counts for more than `mostTrials` trials of one's own, so that records soon
/// outweigh it. Common practice, no source.
///
/// Domain    0 <= low <= high <= 1, mostTrials >= 1 and finite; else std::domain_error.
[[nodiscard]] RatePrior ratePriorOfBand(double low, double high, double mostTrials = 10);

struct PastBatches {
    std::vector<Tray> batches;                // of the same plant and method; empty ones are left out
    std::vector<WeightedCorrelation> spread;  // PooledSpread::law, or knownCorrelation(); weights above 0
    RatePrior prior{};
};

/// Throws std::domain_error that names `function` unless 0 <= successes <= trials in each batch, each correlation is in
/// [0, 1), there is at least one, weights are above 0 and finite, and both prior numbers are from 0.5 to 1e6.
void requirePastBatches(std::string_view function, const PastBatches& past);

struct RatePoint {
    double rate{};
    double correlation{};
    double weight{};  // all weights sum to 1
};

/// Posterior of rate and correlation as points: for each correlation of `past.spread`, `angles` equal steps of
/// asin(sqrt(rate)), at their middles.
///
/// With the default prior the likelihood and any beta-binomial probability are polynomials in the rate, hence
/// trigonometric polynomials in the angle, for which this rule is exact as soon as 2 * angles exceeds twice the trials
/// of past and future together, and nearly so far earlier. `past.spread` is taken as it is, not learnt from the same
/// batches again: PooledSpread::law has them in it already.
///
/// Domain    as requirePastBatches(); angles >= 1.
/// Returns   points whose weight is at least 1e-15 of the largest.
/// Assumes   batches are alike and independent given rate and correlation.
/// Source    Jeffreys's prior: Brown, Cai and DasGupta (2001), Stat. Sci. 16, 101-133; exactness of equal steps:
///           Trefethen and Weideman (2014), SIAM Review 56, 385-458; crowded steps: Sidi (1993), in Brass and
///           Haemmerlin (eds.), Numerical Integration IV, 359-373 (from memory).
[[nodiscard]] std::vector<RatePoint> ratePosterior(const PastBatches& past, int angles);

/// P(0), ..., P(trials) successes in the next batch of so many trials: beta-binomial, averaged over ratePosterior().
///
/// Domain    as requirePastBatches(), 0 <= trials <= 20 000; else std::domain_error.
/// Accuracy  1e-10 absolute, 1e-8 with a prior that is not Jeffreys's; steps are doubled until nothing moves.
[[nodiscard]] std::vector<double> predictiveProbabilities(const PastBatches& past, int trials);

}  // namespace stats
