// SPDX-License-Identifier: MIT
// The whole-tray bootstrap of one arm's rate without drawing: every resample, with its probability.
#pragma once

#include <optional>
#include <span>
#include <vector>

#include "stats/overdispersion/tray.h"

namespace stats {

struct TrayBootstrap {
    int trays{};                    // with trials
    double resamples{};             // different ones, C(2 m - 1, m) for m trays; infinite beyond 500 trays
    std::optional<double> mean;     // of the pooled rate; absent without trials, or when too many to go through
    std::vector<double> quantiles;  // one for each probability asked for; empty where the mean is absent
};

/// Draws as many trays as there are, with replacement, in all ways, and pools each.
///
/// With few trays its quantiles lie too near each other (m trays show (m - 1) / m of the spread): it describes, and
/// tray_interval.h has the interval. A drawn bootstrap must converge to it.
///
/// Domain    0 <= successes <= trials in each tray, 0 <= probability <= 1; else std::domain_error. Empty trays are left
///           out.
/// Returns   quantiles as the smallest pooled rate whose cumulative probability reaches the one asked for. Different
///           (trials, successes) sums are counted up to 300 000, which ten trays never exceed; beyond that no mean.
/// Assumes   trays are independent and alike.
/// Accuracy  1e-12 absolute; a cumulative probability within 1e-12 of the one asked for has reached it.
/// Source    Davison and Hinkley (1997), Bootstrap Methods and their Application, sections 2.3 and 3.8.
[[nodiscard]] TrayBootstrap trayBootstrap(std::span<const Tray> trays, std::span<const double> probabilities);

}  // namespace stats
