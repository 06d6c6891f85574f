// SPDX-License-Identifier: MIT
// Does the rate rise or fall along a score, such as a dose? A hill with its top in the middle has no trend: see
// regression/dose_response.h.
#pragma once

#include <optional>
#include <span>

#include "stats/several_proportions/arm_count.h"

namespace stats {

struct CochranArmitageTrend {
    std::optional<double> z;              // positive where the rate rises with the score
    std::optional<double> chiSquare;      // z squared
    std::optional<double> chiSquareOfN1;  // z squared times (N - 1) / N, as a permutation would have it
    std::optional<double> slope;          // of the rate, a unit of score
    double p{1.0};                        // two-sided
};

/// The test of Cochran and of Armitage for a linear trend of rates, without continuity correction.
///
/// T = sum x (s - mean s), z = T / sqrt(P (1 - P) sum n (s - mean s)^2), the mean weighted by trials.
///
/// Domain    as many scores as arms; 0 <= successes <= trials in each; scores as requireScore() says; else
///           std::domain_error. Arms without trials are left out.
/// Returns   all or none succeeded, or scores that don't differ: all absent, p = 1.
/// Assumes   independent trials. Arms in trays: see overdispersion/tray_trend.h.
/// Accuracy  1e-9 relative, where scores differ by more than 1e-6 of their size.
/// Source    Cochran (1954), Biometrics 10, 417-451; Armitage (1955), Biometrics 11, 375-386.
[[nodiscard]] CochranArmitageTrend cochranArmitageTrend(std::span<const ArmCount> arms, std::span<const double> scores);

}  // namespace stats
