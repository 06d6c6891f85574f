// SPDX-License-Identifier: MIT
// Does the rate of trays rise or fall along a score, such as a dose? What several_proportions/cochran_armitage_trend.h
// asks, with trays for units instead of cuttings.
#pragma once

#include <optional>
#include <span>

#include "stats/interval.h"
#include "stats/overdispersion/tray.h"

namespace stats {

struct ScoredTray {
    double score{};
    Tray tray;
};

struct TrayTrend {
    std::optional<double> slope;          // of the rate, a unit of score; absent where scores don't differ
    std::optional<double> standardError;  // absent without a degree of freedom
    std::optional<double> t;              // absent too where all trays lie on the line
    std::optional<double> p;              // two-sided
    std::optional<Interval> limits;       // of the slope; absent where t is
    int degreesOfFreedom{};               // trays less 2
};

/// The t test of the slope of the straight line through tray rates, each tray counting once whatever its size.
///
/// Domain    0 <= successes <= trials in each tray; scores as requireScore() says; 0 < level < 1; else
///           std::domain_error. Empty trays are left out.
/// Returns   fewer than two different scores: nothing. Two trays: a slope without standard error. All trays on the
///           line, within 1e-12 of a rate: standard error 0, no t, no p.
/// Assumes   trays are independent and spread alike about the line. A hill has no slope: see
///           regression/dose_response.h.
/// Accuracy  1e-9 relative, where scores differ by more than 1e-6 of their size.
/// Source    Draper and Smith (1998), Applied Regression Analysis, 3rd ed., ch. 1.
[[nodiscard]] TrayTrend trayTrend(std::span<const ScoredTray> trays, double level = 0.95);

}  // namespace stats
