// SPDX-License-Identifier: MIT
// One step of interval_mixture.h: the largest value of a concave quadratic where no coordinate may be negative.
#pragma once

#include <cstddef>
#include <vector>

#include "stats/numeric/square_matrix.h"

namespace stats {

/// Between where and where the elements of each row may differ from 0. A check interval overlaps few others, so what is
/// far from the diagonal is 0 unless cuttings dropped out early, and a decomposition need not look at it.
struct RowReach {
    std::vector<std::size_t> first, last;
};

/// Raises b'x - x'Hx / 2 from a nonnegative `x`, ideally to its maximum under x >= 0; it never falls. H is positive
/// semidefinite.
/// Source    the active-set method of Lawson and Hanson (1974), Solving Least Squares Problems, ch. 23, begun with
///           all columns in.
void maximiseNonnegativeQuadratic(const SquareMatrix& h, const RowReach& reach, const std::vector<double>& b,
                                  std::vector<double>& x);
/// Where nothing is known of the reach.
void maximiseNonnegativeQuadratic(const SquareMatrix& h, const std::vector<double>& b, std::vector<double>& x);

}  // namespace stats
