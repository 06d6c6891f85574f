// SPDX-License-Identifier: MIT
// Two arms of several trays each, compared tray by tray: the verdict of a comparison rests on this from three trays an
// arm.
#pragma once

#include <optional>
#include <span>

#include "stats/interval.h"
#include "stats/overdispersion/tray.h"

namespace stats {

struct TrayTTest {
    std::optional<double> difference;     // mean of arm 1's tray rates less arm 2's; absent where an arm has no trays
    std::optional<double> standardError;  // absent without a degree of freedom
    std::optional<double> t;              // absent too when no tray differs from its arm's others
    std::optional<double> p;              // two-sided
    std::optional<Interval> limits;       // of the difference, clipped to [-1, 1]; absent where t is
    int degreesOfFreedom{};
};

/// Student's t test with equal variances on the rates of the trays, each tray counting once whatever its size.
///
/// Simulated with 20 cuttings a tray and correlations of 0.05 and 0.10, it rejects 3.5 to 5.8 % of the time at 5 %,
/// from two trays an arm.
///
/// Domain    0 <= successes <= trials in each tray, 0 < level < 1; else std::domain_error. Empty trays are left out.
/// Returns   one tray an arm: 0 degrees of freedom, no standard error, no p. Identical rates within each arm:
///           standard error 0, no t, no p.
/// Assumes   trays are independent; arms spread alike.
/// Accuracy  1e-9 relative.
/// Source    Student (1908), Biometrika 6, 1-25; Donner and Klar (2000), Design and Analysis of Cluster Randomization
///           Trials, ch. 6.
[[nodiscard]] TrayTTest trayTTest(std::span<const Tray> first, std::span<const Tray> second, double level = 0.95);

}  // namespace stats
