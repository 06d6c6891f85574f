// SPDX-License-Identifier: MIT
// Successes summed over trays that share a rate but not their luck. Only for predictive_count.cpp and predictive_range.cpp.
#pragma once

#include <span>
#include <vector>

#include "stats/overdispersion/beta_binomial_posterior.h"
#include "stats/planning/thinning.h"

namespace stats {

/// For each point of a posterior, the probabilities of 0, 1, ... wanted - 1 successes that live on in the trays added so
/// far; what has reached `wanted` is not followed further.
class TraySums {
  public:
    /// wanted >= 1, 0 < livesOn <= 1, no tray will be larger than `largestTray`.
    TraySums(std::vector<RatePoint> points, int wanted, double livesOn, int largestTray);

    void addTray(int size);
    /// Probability of `wanted` or more with one more tray of this size, which isn't added. Never falls with size.
    [[nodiscard]] double chanceWithAnotherTray(int size) const;
    /// Probabilities of 0, 1, ... wanted - 1 over the whole posterior, of the trays added so far.
    [[nodiscard]] std::vector<double> law() const;

  private:
    struct Sum {
        RatePoint point;
        std::vector<double> fewer;    // [s]: exactly s successes that live on
        std::vector<double> upTo;     // [s]: s or fewer, for s up to wanted - 1
        std::vector<double> lastLaw;  // of a tray as large as the last one added
    };
    [[nodiscard]] std::vector<double> lawOf(const Sum& sum, int size) const;
    void addUp(Sum& sum) const;

    std::vector<Sum> sums_;
    std::size_t wanted_;
    Thinning thinning_;
    int lastSize_{-1};
    double done_{};  // weight of the points at which fewer than wanted is no longer possible
};

}  // namespace stats
