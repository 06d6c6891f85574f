// SPDX-License-Identifier: MIT
// Do the strata agree about the odds ratio? A warning beside the pooled answer, not a verdict: with thin strata it sees
// little.
#pragma once

#include <optional>
#include <span>

#include "stats/strata/stratum.h"

namespace stats {

struct BreslowDayTaroneTest {
    std::optional<double> chiSquare;  // all four absent where the test does not apply
    std::optional<double> p;
    std::optional<double> taroneChiSquare;
    std::optional<double> taroneP;
    int degreesOfFreedom{};
};

/// The test of Breslow and Day for one common odds ratio, and the same with Tarone's correction.
///
/// Each stratum's successes are compared with those fitted under Mantel and Haenszel's odds ratio and the stratum's
/// margins. Tarone's correction makes up for that odds ratio's not being the maximum-likelihood one.
///
/// Domain    0 <= successes <= trials, else std::domain_error.
/// Returns   absent unless two strata or more are informative and the pooled odds ratio is positive and finite;
///           degrees of freedom = informative strata - 1 (0 where absent).
/// Assumes   independent trials, strata of some size (fitted counts of 5 and more, common practice).
/// Accuracy  1e-8 relative. The fitted count is the root of a quadratic, taken in the form that does not cancel.
/// Source    Breslow and Day (1980), Statistical Methods in Cancer Research I, p. 142; Tarone (1985), Biometrika 72,
///           91-95.
[[nodiscard]] BreslowDayTaroneTest breslowDayTaroneTest(std::span<const Stratum> strata);

}  // namespace stats
