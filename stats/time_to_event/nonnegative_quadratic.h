// SPDX-License-Identifier: MIT
// One step of interval_mixture.h: the largest value of a concave quadratic where no coordinate may be negative.
#pragma once

#include <vector>

#include "stats/numeric/square_matrix.h"

namespace stats {

/// Raises b'x - x'Hx / 2 from a nonnegative `x`, ideally to its maximum under x >= 0; it never falls. H is positive
/// semidefinite.
/// Source    the active-set method of Lawson and Hanson (1974), Solving Least Squares Problems, ch. 23, begun with
///           all columns in.
void maximiseNonnegativeQuadratic(const SquareMatrix& h, const std::vector<double>& b, std::vector<double>& x);

}  // namespace stats
