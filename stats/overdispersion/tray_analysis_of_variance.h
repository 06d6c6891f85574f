// SPDX-License-Identifier: MIT
// Several arms of several trays each, compared at once tray by tray: what tray_t_test.h is for two.
#pragma once

#include <optional>
#include <span>
#include <vector>

#include "stats/overdispersion/tray.h"

namespace stats {

struct TrayAnalysisOfVariance {
    std::optional<double> f;               // absent where it can't be had, see Returns
    std::optional<double> p;               // absent where f is
    std::optional<double> withinVariance;  // of tray rates about their arm's mean; absent without a degree of freedom
    int betweenDegrees{};                  // arms with trays less 1
    int withinDegrees{};                   // trays less arms
};

/// The one-way analysis of variance of tray rates, each tray counting once whatever its size. With two arms it is
/// trayTTest(): F = t squared.
///
/// Domain    0 <= successes <= trials in each tray, else std::domain_error. Empty trays and arms without trays are left
///           out.
/// Returns   no F with fewer than two arms, with one tray in each, or where no tray differs from its arm's others.
/// Assumes   trays are independent; arms spread alike.
/// Accuracy  1e-9 relative.
/// Source    Fisher (1925), Statistical Methods for Research Workers, ch. 7.
[[nodiscard]] TrayAnalysisOfVariance trayAnalysisOfVariance(std::span<const std::vector<Tray>> arms);

}  // namespace stats
