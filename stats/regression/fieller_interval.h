// SPDX-License-Identifier: MIT
// The interval of a ratio of two estimates, such as the top of a fitted parabola.
#pragma once

#include <optional>

#include "stats/interval.h"

namespace stats {

struct RatioOfEstimates {
    double numerator{};
    double denominator{};
    double numeratorVariance{};
    double denominatorVariance{};
    double covariance{};
};

/// All ratios r that the test of numerator = r denominator would not reject, `quantile` standard errors being the
/// bound.
///
/// Domain    all finite, variances 0 or more, quantile above 0; else std::domain_error.
/// Returns   absent where the set is unbounded: the denominator is not clearly apart from 0.
/// Assumes   both estimates are normal, or Student's with one variance.
/// Accuracy  1e-13 relative to the longer root: the shorter comes from the product of the roots.
/// Source    Fieller (1954), J. R. Stat. Soc. B 16, 175-185.
[[nodiscard]] std::optional<Interval> fiellerInterval(const RatioOfEstimates& estimates, double quantile);

}  // namespace stats
