// SPDX-License-Identifier: MIT
// A small square matrix by rows: what cholesky.h and the quadratic steps of the fits work on.
#pragma once

#include <cstddef>
#include <vector>

namespace stats {

struct SquareMatrix {
    std::size_t size{};
    std::vector<double> values;

    [[nodiscard]] double& at(std::size_t row, std::size_t column) { return values[row * size + column]; }
    [[nodiscard]] double at(std::size_t row, std::size_t column) const { return values[row * size + column]; }
};

/// All zeros.
[[nodiscard]] inline SquareMatrix zeroMatrix(std::size_t size) {
    return {.size = size, .values = std::vector<double>(size * size)};
}

}  // namespace stats
