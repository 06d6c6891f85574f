// SPDX-License-Identifier: MIT
// A running sum that keeps what rounding drops, for sums of many small terms.
#pragma once

#include <cmath>

namespace stats {

/// Neumaier's summation. Error about one rounding of the result, whatever the number of terms.
/// Source    Neumaier (1974), Z. Angew. Math. Mech. 54, 39-51.
class CompensatedSum {
  public:
    void add(double term) {
        const double next = sum_ + term;
        lost_ += std::abs(sum_) >= std::abs(term) ? (sum_ - next) + term : (term - next) + sum_;
        sum_ = next;
    }
    [[nodiscard]] double value() const { return sum_ + lost_; }

  private:
    double sum_{};
    double lost_{};
};

}  // namespace stats
