// SPDX-License-Identifier: MIT
// Where a function of one variable crosses zero, or a claim stops to hold, between two known points.
#pragma once

#include <functional>

namespace stats {

/// A root of a continuous function by Brent's method.
///
/// Domain    function(low) and function(high) are not both above or both below zero; else std::domain_error.
/// Returns   x between low and high where the sign changes, within tolerance + 4e-16 |x|.
/// Source    Brent (1973), Algorithms for Minimization without Derivatives, chapter 4.
[[nodiscard]] double bracketedRoot(const std::function<double(double)>& function, double low, double high,
                                   double tolerance = 0);

/// Bisection for a claim that holds at `inside`, doesn't at `outside`, and changes once between them. It asks for no
/// value, so it serves where a statistic jumps or becomes infinite.
///
/// Returns   the last point from `inside` at which the claim was seen to hold; it is next to one where it doesn't,
///           within the spacing of doubles.
[[nodiscard]] double lastPointWhere(const std::function<bool(double)>& holds, double inside, double outside);

}  // namespace stats
