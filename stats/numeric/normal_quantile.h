// SPDX-License-Identifier: MIT
#pragma once

namespace stats {

/// Quantile of the standard normal distribution.
///
/// Domain    0 < probability < 1; else std::domain_error.
/// Returns   z with P(Z <= z) = probability.
/// Accuracy  within 5e-15 relative (or absolute near 0), against 50-digit values.
/// Source    Boost.Math's inverse error functions.
[[nodiscard]] double normalQuantile(double probability);

/// The z of a two-sided interval: normalQuantile((1 + level) / 2).
/// Domain    0 < level < 1; else std::domain_error.
[[nodiscard]] double normalQuantileOfLevel(double level);

}  // namespace stats
