// SPDX-License-Identifier: MIT
// Two arms of several trays of unequal size, compared tray by tray, each tray weighing as much as it can tell. Where all
// trays are of one size this is tray_t_test.h.
#pragma once

#include <array>
#include <span>

#include "stats/overdispersion/tray.h"
#include "stats/overdispersion/tray_t_test.h"

namespace stats {

/// Student's t test on the rates of trays that weigh n / (1 + (n - 1) correlation), n being the trials of a tray: the
/// inverse of what its rate varies by, but for p (1 - p).
///
/// With correlation 0 the arm's mean is its pooled rate; with 1 each tray counts once and the test is trayTTest().
/// Right in size only as far as the correlation is: simulated where it was 0.2, the test with 0 rejected 5.6 % of the
/// time at 5 %; see trayGuardedTTest().
///
/// Domain    0 <= successes <= trials in each tray, 0 <= correlation <= 1, 0 < level < 1; else std::domain_error. Empty
///           trays are left out.
/// Returns   as trayTTest(); identical rates within each arm: standard error 0, no t, no p.
/// Assumes   trays are independent; rates vary as p (1 - p) / weight, p (1 - p) alike in both arms.
/// Accuracy  1e-9 relative.
/// Source    Donner and Klar (2000), Design and Analysis of Cluster Randomization Trials, ch. 6 (from memory); weighted
///           least squares of the rates on the arm.
[[nodiscard]] TrayTTest trayWeightedTTest(std::span<const Tray> first, std::span<const Tray> second, double correlation,
                                          double level = 0.95);

/// Those that trayGuardedTTest() takes: trays weigh by their cuttings, or large ones hardly more than small ones.
inline constexpr std::array guardedCorrelations{0.0, 0.1};

/// The more cautious of two weighted tests, whichever way the truth is: with correlation 0 (trays weigh by their
/// cuttings) and with 0.1 (large trays hardly more than small ones).
///
/// A verdict that rests on it holds its level where trayTTest() doesn't: with 3 trays of 5 to 8 cuttings against 6 of 25
/// to 30 and no correlation that one rejects 14 % of the time at 5 %, this one 5 %. Simulated with correlations from 0 to
/// 0.2, from three trays an arm, sizes from 5 to 30 in both arms, it rejects 3.8 to 4.9 % of the time. It finds a true
/// difference about as often as trayTTest() (docs/statistics/calibration.md).
///
/// Domain    0 <= successes <= trials in each tray, 0 < level < 1; else std::domain_error. Empty trays are left out.
/// Returns   difference: of the pooled rates. p: the larger of the two, 1 where the two point in opposite directions.
///           limits: from the lower of the low ones to the higher of the high ones, so that they leave out 0 exactly
///           where p < 1 - level. t and standardError: those of the test with the larger p. No p and no limits where
///           no tray differs from its arm's others.
/// Assumes   trays are independent.
/// Accuracy  1e-9 relative.
/// Source    own choice among candidates by simulation, see above.
[[nodiscard]] TrayTTest trayGuardedTTest(std::span<const Tray> first, std::span<const Tray> second,
                                         double level = 0.95);

}  // namespace stats
