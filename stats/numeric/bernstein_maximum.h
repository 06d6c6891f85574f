// SPDX-License-Identifier: MIT
#pragma once

#include <span>

namespace stats {

/// The largest value on [0, 1] of  sum over k of C(N, k) p^k (1 - p)^(N - k) coefficients[k],  N + 1 coefficients.
///
/// This is how an unconditional exact test gets rid of the rate that both arms share: coefficients[k] is the
/// probability of the critical region given k successes in all. The sum smooths the coefficients with a binomial, whose
/// spread on the scale of asin(sqrt(p)) is 1 / (2 sqrt(N)); a grid of a sixteenth of 1 / sqrt(N) on that scale
/// therefore sees every hill, also those near 0 and 1, and each that could hold the maximum is climbed by golden
/// section. A uniform grid of 100 points would err by up to 2e-4.
///
/// Domain    at least one coefficient, each in [0, 1] (up to rounding); else std::domain_error.
/// Returns   the maximum, at least the larger of the first and the last coefficient.
/// Accuracy  within 1e-10 absolute.
[[nodiscard]] double bernsteinMaximum(std::span<const double> coefficients);

/// The same sum at one p in [0, 1].
[[nodiscard]] double bernsteinSum(std::span<const double> coefficients, double p);

}  // namespace stats
