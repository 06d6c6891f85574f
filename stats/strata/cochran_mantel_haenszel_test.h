// SPDX-License-Identifier: MIT
// Is there a difference between two arms at all, stratum by stratum? The test that goes with mantel_haenszel.h.
#pragma once

#include <optional>
#include <span>

#include "stats/strata/stratum.h"

namespace stats {

struct CochranMantelHaenszelTest {
    std::optional<double> chiSquare;  // absent without an informative stratum
    double p{1.0};
    std::optional<double> correctedChiSquare;
    double correctedP{1.0};
};

/// The test of Cochran and of Mantel and Haenszel, without and with continuity correction.
///
/// D = sum(a - E), V = sum of the hypergeometric variances: chi-square D^2 / V, corrected max(0, |D| - 1/2)^2 / V,
/// each on one degree of freedom. Strata with fewer than two trials are dropped; strata with an empty arm or a zero
/// margin have no variance.
///
/// Domain    0 <= successes <= trials, else std::domain_error. No strata at all is allowed.
/// Returns   no informative stratum: no chi-square, p = 1.
/// Assumes   independent trials. Most powerful when the odds ratio is the same in all strata, valid when it is not.
/// Accuracy  1e-9 relative. R's mantelhaen.test differs on purpose: it drops the correction altogether when |D| <
///           1/2.
/// Source    Cochran (1954), Biometrics 10, 417-451; Mantel and Haenszel (1959), J. Natl. Cancer Inst. 22, 719-748.
[[nodiscard]] CochranMantelHaenszelTest cochranMantelHaenszelTest(std::span<const Stratum> strata);

}  // namespace stats
