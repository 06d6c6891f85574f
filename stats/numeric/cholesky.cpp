// SPDX-License-Identifier: MIT
#include "stats/numeric/cholesky.h"

#include <cmath>

namespace stats {

Cholesky::Cholesky(const SquareMatrix& matrix, double leastPivot) : lower_(zeroMatrix(matrix.size)) {
    for (std::size_t i = 0; i < matrix.size; ++i) {
        for (std::size_t j = 0; j <= i; ++j) {
            double left = matrix.at(i, j);
            for (std::size_t k = 0; k < j; ++k) left -= lower_.at(i, k) * lower_.at(j, k);
            if (j < i) {
                lower_.at(i, j) = left / lower_.at(j, j);
            } else if (left > leastPivot * matrix.at(i, i)) {
                lower_.at(i, i) = std::sqrt(left);
            } else {
                firstDependent_ = i;
                return;
            }
        }
    }
}

std::vector<double> Cholesky::solve(const std::vector<double>& right) const {
    std::vector<double> x = right;
    for (std::size_t i = 0; i < x.size(); ++i) {
        for (std::size_t k = 0; k < i; ++k) x[i] -= lower_.at(i, k) * x[k];
        x[i] /= lower_.at(i, i);
    }
    for (std::size_t i = x.size(); i-- > 0;) {
        for (std::size_t k = i + 1; k < x.size(); ++k) x[i] -= lower_.at(k, i) * x[k];
        x[i] /= lower_.at(i, i);
    }
    return x;
}

SquareMatrix Cholesky::inverse() const {
    SquareMatrix result = zeroMatrix(lower_.size);
    for (std::size_t column = 0; column < lower_.size; ++column) {
        std::vector<double> unit(lower_.size);
        unit[column] = 1;
        const std::vector<double> x = solve(unit);
        for (std::size_t row = 0; row < lower_.size; ++row) result.at(row, column) = x[row];
    }
    return result;
}

double Cholesky::logDeterminant() const {
    double sum = 0;
    for (std::size_t i = 0; i < lower_.size; ++i) sum += 2 * std::log(lower_.at(i, i));
    return sum;
}

}  // namespace stats
