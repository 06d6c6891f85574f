// SPDX-License-Identifier: MIT
// "As good as, within a margin" where each arm has several trays; beside two_proportions/non_inferiority.h, which takes
// every cutting for a trial of its own.
#pragma once

#include <optional>
#include <span>

#include "stats/interval.h"
#include "stats/overdispersion/tray.h"

namespace stats {

struct TrayNonInferiority {
    double difference{};  // pooled rate of arm 1 less that of arm 2
    Interval limits;      // trayGuardedTTest()'s
    double t{};           // (difference + margin) / s.e., the smaller of that test's two
    double p{};           // of the one-sided test that the first is worse by the margin or more
    bool isShown{};       // limits.low > -margin
};

/// trayGuardedTTest()'s interval held against a margin.
///
/// Domain    0 <= successes <= trials in each tray, 0 < margin < 1, 0 < level < 1; else std::domain_error. Empty trays
///           are left out.
/// Returns   absent where it can't be judged: an arm without trays, one tray an arm, no spread in either arm.
/// Assumes   trays are independent; arms spread alike; the margin was set before looking.
/// Accuracy  1e-9 relative.
/// Source    Donner and Klar (2000), Design and Analysis of Cluster Randomization Trials, ch. 6; the margin as in
///           Farrington and Manning (1990), Stat. Med. 9, 1447-1454.
[[nodiscard]] std::optional<TrayNonInferiority> trayNonInferiority(std::span<const Tray> first,
                                                                   std::span<const Tray> second, double margin,
                                                                   double level = 0.95);

}  // namespace stats
