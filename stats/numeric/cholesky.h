// SPDX-License-Identifier: MIT
// Linear equations with a small positive definite matrix: a fit's information matrix has a row for each coefficient,
// and there are a handful of them. For a large one with a row for each day see time_to_event/nonnegative_quadratic.h.
#pragma once

#include <cstddef>
#include <optional>
#include <vector>

#include "stats/numeric/square_matrix.h"

namespace stats {

/// The decomposition of a symmetric matrix into a lower triangle times its mirror image.
///
/// Only the lower triangle of `matrix` is read. A pivot of at most `leastPivot` times its diagonal element counts as
/// zero: that column is, to the digits a double has, a combination of those before it.
///
/// Accuracy  solutions within 1e-15 times the condition number, relative.
/// Source    Golub and Van Loan (2013), Matrix Computations, 4th ed., section 4.2.
class Cholesky {
  public:
    explicit Cholesky(const SquareMatrix& matrix, double leastPivot = 1e-13);

    [[nodiscard]] bool isPositiveDefinite() const { return !firstDependent_; }
    /// The first column that is a combination of those before it.
    [[nodiscard]] std::optional<std::size_t> firstDependent() const { return firstDependent_; }

    /// The rest only for a positive definite matrix.
    [[nodiscard]] std::vector<double> solve(const std::vector<double>& right) const;
    [[nodiscard]] SquareMatrix inverse() const;
    [[nodiscard]] double logDeterminant() const;

  private:
    SquareMatrix lower_;
    std::optional<std::size_t> firstDependent_;
};

}  // namespace stats
