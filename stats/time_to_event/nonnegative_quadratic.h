// SPDX-License-Identifier: MIT
// One step of interval_mixture.h: the largest value of a concave quadratic where no coordinate may be negative.
#pragma once

#include <cstddef>
#include <vector>

namespace stats {

/// A symmetric matrix, by rows.
struct SquareMatrix {
    std::size_t size{};
    std::vector<double> values;

    [[nodiscard]] double& at(std::size_t row, std::size_t column) { return values[row * size + column]; }
    [[nodiscard]] double at(std::size_t row, std::size_t column) const { return values[row * size + column]; }
};

/// Raises b'x - x'Hx / 2 from a nonnegative `x`, ideally to its maximum under x >= 0; it never falls. H is positive
/// semidefinite.
/// Source    the active-set method of Lawson and Hanson (1974), Solving Least Squares Problems, ch. 23, begun with
///           all columns in.
void maximiseNonnegativeQuadratic(const SquareMatrix& h, const std::vector<double>& b, std::vector<double>& x);

}  // namespace stats
