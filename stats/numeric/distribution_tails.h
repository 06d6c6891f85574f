// SPDX-License-Identifier: MIT
// Tails and quantiles of the distributions that test statistics are compared with. The normal one is in
// normal_quantile.h.
#pragma once

namespace stats {

/// P(X >= x) for chi-square. degreesOfFreedom >= 1, x >= 0 (infinity gives 0); else std::domain_error. Within 1e-13
/// relative.
[[nodiscard]] double chiSquareTail(double x, int degreesOfFreedom);

/// P(|T| >= |t|) for Student's distribution. degreesOfFreedom > 0, else std::domain_error. Within 1e-13 relative.
[[nodiscard]] double studentTwoSidedTail(double t, double degreesOfFreedom);

/// t with P(T <= t) = probability. degreesOfFreedom > 0, 0 < probability < 1, else std::domain_error. Within 1e-12
/// relative.
[[nodiscard]] double studentQuantile(double probability, double degreesOfFreedom);

/// t with P(-t <= T <= t) = level, for levels as near to 1 as a double comes: (1 + level) / 2 would round to 1.
/// degreesOfFreedom > 0, 0 < level < 1, else std::domain_error. Within 1e-12 relative.
[[nodiscard]] double studentQuantileOfLevel(double level, double degreesOfFreedom);

/// P(F >= f) for Fisher's distribution of variance ratios. Both degrees of freedom >= 1, f >= 0 (infinity gives 0); else
/// std::domain_error. Within 1e-13 relative.
[[nodiscard]] double varianceRatioTail(double f, int above, int below);

}  // namespace stats
