// SPDX-License-Identifier: MIT
// Successes summed over trays that share a rate but not their luck. Only for predictive_count.cpp.
#pragma once

#include <span>
#include <vector>

#include "stats/overdispersion/beta_binomial_posterior.h"

namespace stats {

/// For each point of a posterior, the probabilities of 0, 1, ... wanted - 1 successes in the trays added so far; what
/// has reached `wanted` is not followed further.
class TraySums {
  public:
    /// wanted >= 1.
    TraySums(std::vector<RatePoint> points, int wanted);

    void addTray(int size);
    /// Probability of `wanted` or more with one more tray of this size, which isn't added. Never falls with size.
    [[nodiscard]] double chanceWithAnotherTray(int size) const;

  private:
    struct Sum {
        RatePoint point;
        std::vector<double> fewer;  // [s]: exactly s successes
    };
    std::vector<Sum> sums_;
    std::size_t wanted_;
    double done_{};  // weight of the points at which fewer than wanted is no longer possible
};

}  // namespace stats
