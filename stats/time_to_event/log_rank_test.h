// SPDX-License-Identifier: MIT
// Do arms differ in their days, when days are known exactly and nothing competes? Takes each cutting for independent.
// For days between checks and whole batches see curve_permutation_test.h; this one is for comparison with other
// programs.
#pragma once

#include <optional>
#include <span>
#include <vector>

#include "stats/time_to_event/aalen_johansen.h"

namespace stats {

struct LogRankTest {
    std::vector<double> observed;  // events, one an arm
    std::vector<double> expected;  // under equal hazards
    std::optional<double> statistic;
    std::optional<double> p;
    int degreesOfFreedom{};  // arms that were ever at risk at an event, less one
};

/// The log-rank test with the hypergeometric variance.
///
/// Domain    each inner vector is one arm, as aalenJohansen() wants its rows, no cause 2, weights whole numbers; else
///           std::domain_error. No arm and empty arms are allowed.
/// Returns   no statistic and no p where the variance is singular: no event, or none while two arms were at risk.
/// Assumes   independent units; withdrawal has nothing to do with what would have happened.
/// Accuracy  1e-10 relative.
/// Source    Mantel (1966), Cancer Chemother. Rep. 50, 163-170; Peto and Peto (1972), J. R. Stat. Soc. A 135, 185-207.
[[nodiscard]] LogRankTest logRankTest(std::span<const std::vector<ExactDay>> arms);

}  // namespace stats
