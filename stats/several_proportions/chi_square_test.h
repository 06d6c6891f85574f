// SPDX-License-Identifier: MIT
// Do several arms differ at all? Says nothing about which: for that compare pairs and adjust by holm_adjustment.h; for
// doses cochran_armitage_trend.h sees more.
#pragma once

#include <optional>
#include <span>

#include "stats/several_proportions/arm_count.h"

namespace stats {

struct ChiSquareTest {
    std::optional<double> chiSquare;    // absent with fewer than two arms that have trials
    std::optional<double> minExpected;  // the smallest expected count of successes or failures; absent likewise
    double p{1.0};
    int degreesOfFreedom{};
};

/// Pearson's chi-square of successes and failures by arm, without continuity correction.
///
/// Domain    0 <= successes <= trials in each arm, else std::domain_error. Arms without trials are left out; no arms at
///           all is allowed.
/// Returns   fewer than two arms: no chi-square, p = 1, no degrees of freedom. All or none succeeded: chi-square 0,
///           p = 1.
/// Assumes   independent trials, expected counts of 5 and more (common practice). Arms in trays: see
///           overdispersion/tray_analysis_of_variance.h.
/// Accuracy  1e-12 relative.
/// Source    Pearson (1900), Philos. Mag. 50, 157-175.
[[nodiscard]] ChiSquareTest chiSquareTest(std::span<const ArmCount> arms);

/// Counts that needn't be whole, as clustered ones have after division by their design effect.
struct EffectiveCount {
    double successes{};
    double trials{};
};

/// Domain    0 <= successes <= trials, finite; else std::domain_error.
[[nodiscard]] ChiSquareTest chiSquareTestOfEffective(std::span<const EffectiveCount> arms);

}  // namespace stats
