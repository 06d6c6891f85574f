// SPDX-License-Identifier: MIT
// How sure is a curve, when the cuttings of one batch share its fate: whole batches are drawn again, with replacement,
// and the curve is estimated anew each time.
#pragma once

#include <cstdint>
#include <optional>
#include <span>
#include <stop_token>
#include <vector>

#include "stats/interval.h"
#include "stats/numeric/seeded_random.h"
#include "stats/time_to_event/curve_quantiles.h"

namespace stats {

struct WantedQuantile {
    double target{0.5};
    ShareOf of{ShareOf::Everyone};
};

struct BootstrapQuestion {
    std::vector<WantedQuantile> quantiles;  // of cause 1
    std::vector<double> days;               // on which the bands are wanted
    double level{0.95};
    int replicates{1000};
};

struct BootstrapQuantile {
    /// From the lower percentile of the replicates' `after` days to the upper one of their `by` days, a replicate that
    /// does not reach the target counting as infinity: high, and even low, may be infinite.
    Interval limits;
    double shareReached{};  // of the replicates
};

struct CurveBootstrap {
    std::vector<BootstrapQuantile> quantiles;  // in the question's order
    std::vector<Interval> bands1;  // pointwise, one a day: lower percentile of atLeast, upper of atMost, both taken at
                                   // expandedPercentileLevel()
    std::vector<Interval> bands2;
    int replicates{};   // made
    bool wasStopped{};  // fewer than asked for: to be thrown away
};

/// The level at which percentiles of replicates have to be taken, so that few batches don't make a band too narrow:
/// 2 Phi(sqrt(m / (m - 1)) t) - 1, t being Student's quantile of `level` on m - 1 degrees of freedom. Resampling m
/// batches shows (m - 1) / m of their variance, and takes it for known.
///
/// Domain    0 < level < 1, batches >= 2; else std::domain_error.
/// Returns   at least `level`, below 1 or, with very few batches, 1 to all digits: then the percentiles are the extremes.
/// Accuracy  1e-14.
/// Source    the expanded percentile interval of Hesterberg (2015), Am. Stat. 69, 371-386.
[[nodiscard]] double expandedPercentileLevel(double level, int batches);

/// Percentile intervals from resampling whole batches (each inner vector is one batch).
///
/// The percentile is the smallest replicate value whose share of replicates reaches (1 - level) / 2, or its mirror
/// image at the top.
///
/// Domain    as competingRisksNpmle(); 0 < level < 1, replicates >= 1, targets in (0, 1], days >= 0; else
///           std::domain_error. Batches without observations of positive weight are left out.
/// Returns   absent with fewer than two batches: one batch says nothing about how batches differ.
/// Assumes   batches are independent and alike in kind. Intervals of quantiles are plain percentiles: they cover the
///           truth as often as they say from three batches on (docs/statistics/calibration.md), a day being between two
///           checks. Bands are expanded.
/// Accuracy  replicates are estimated to a gap of 1e-8 of their weight. The same seed gives the same answer.
/// Source    Davison and Hinkley (1997), Bootstrap Methods and their Application, 3.8; Field and Welsh (2007), J. R.
///           Stat. Soc. B 69, 369-390.
[[nodiscard]] std::optional<CurveBootstrap> clusterBootstrap(std::span<const std::vector<Observation>> batches,
                                                             const BootstrapQuestion& question, SeededRandom& random,
                                                             std::stop_token stop = {});

}  // namespace stats
