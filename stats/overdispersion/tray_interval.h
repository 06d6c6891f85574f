// SPDX-License-Identifier: MIT
// The interval for one rate that allows for the spread between trays; beside wilson_interval.h, which does not.
#pragma once

#include <optional>
#include <span>

#include "stats/interval.h"
#include "stats/overdispersion/tray.h"

namespace stats {

struct TrayInterval {
    std::optional<double> estimate;  // pooled rate; absent without trials
    Interval limits{0.0, 1.0};
    double effectiveTrials{};  // n* below
    bool
        includesTrayVariation{};  // false: the spread cannot be seen, and the interval is Wilson's on the pooled counts
};

/// Wilson's interval on Korn and Graubard's effective number of trials.
///
/// n* = min(N, N / deff (t[N-1] / t[m-1])^2), t the (1 + level) / 2 quantiles of Student's distribution, m trays, N
/// trials. With three or four trays of twenty and an intraclass correlation of 0.1 it covers about 96 % at level
/// 0.95, Wilson's on the pooled counts about 75 % (simulated, 4000 runs).
///
/// Domain    0 <= successes <= trials in each tray, 0 < level < 1; else std::domain_error. Empty trays are left out.
/// Returns   one tray, or all or none succeeded: n* = N and includesTrayVariation false. Design effect 0: n* = N. No
///           trials: [0, 1].
/// Assumes   trays are independent of each other.
/// Accuracy  1e-8.
/// Source    Korn and Graubard (1998), Survey Methodology 24, 193-201; Wilson (1927), J. Am. Stat. Assoc. 22,
///           209-212.
[[nodiscard]] TrayInterval trayInterval(std::span<const Tray> trays, double level);

}  // namespace stats
