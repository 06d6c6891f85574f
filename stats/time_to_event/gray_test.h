// SPDX-License-Identifier: MIT
// Do arms differ in the cumulative incidence of one of two competing events, when days are known exactly? Takes each
// cutting for independent. For days between checks and whole batches see curve_permutation_test.h; this one is for
// comparison with other programs.
#pragma once

#include <optional>
#include <span>
#include <vector>

#include "stats/time_to_event/aalen_johansen.h"

namespace stats {

struct GrayTest {
    std::optional<double> statistic;
    std::optional<double> p;
    int degreesOfFreedom{};  // arms less one
};

/// Gray's test with weight 1 (rho = 0) for the cause, 1 or 2.
///
/// Events of one day in one arm are treated as drawn without replacement, which multiplies their variance by
/// 1 - (d - 1) / (r - 1): the corrections for ties of the R package cmprsk.
///
/// Domain    each inner vector is one arm, as aalenJohansen() wants its rows, weights whole numbers; cause 1 or 2; else
///           std::domain_error. No arm and empty arms are allowed.
/// Returns   no statistic and no p where the variance is singular: no event of the cause, or an arm without anyone.
/// Assumes   independent units; withdrawal has nothing to do with what would have happened and is alike in all arms.
/// Accuracy  1e-9 relative.
/// Source    Gray (1988), Ann. Stat. 16, 1141-1154.
[[nodiscard]] GrayTest grayTest(std::span<const std::vector<ExactDay>> arms, int cause);

}  // namespace stats
