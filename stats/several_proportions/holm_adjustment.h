// SPDX-License-Identifier: MIT
// Several comparisons at once: p values raised so that all of them together keep the level.
#pragma once

#include <span>
#include <vector>

namespace stats {

/// Holm's step-down adjustment.
///
/// The k-th smallest of m is multiplied by m - k + 1; none may then be below a smaller one's, nor above 1. Uniformly
/// better than Bonferroni's, and like it valid however the comparisons depend on each other.
///
/// Domain    each p in [0, 1], else std::domain_error. None at all is allowed.
/// Returns   in the order given, each at least what it was; ties stay ties.
/// Assumes   nothing about how the comparisons depend on each other.
/// Accuracy  one rounding.
/// Source    Holm (1979), Scand. J. Stat. 6, 65-70.
[[nodiscard]] std::vector<double> holmAdjustment(std::span<const double> p);

}  // namespace stats
