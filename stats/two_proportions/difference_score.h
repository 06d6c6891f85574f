// SPDX-License-Identifier: MIT
// The score test of one given difference of two rates, on which miettinen_nurminen_difference.h and non_inferiority.h
// rest.
#pragma once

#include "stats/two_proportions/two_counts.h"

namespace stats {

/// How far the observed difference is from a given one, in standard errors at the most likely rates that differ by the
/// given one. Both arms have trials.
class DifferenceScore {
  public:
    /// With `isUnbiased` the variance is multiplied by N/(N - 1).
    DifferenceScore(const TwoCounts& counts, bool isUnbiased);

    [[nodiscard]] double observed() const { return observed_; }
    /// difference in [-1, 1]. Not negative; 0 only where both restricted rates are 0 or 1.
    [[nodiscard]] double standardError(double difference) const;

  private:
    [[nodiscard]] double restrictedSecondRate(double difference) const;

    double rooted1_, rooted2_, not1_, not2_;
    double observed_;
    double varianceFactor_{1};
};

}  // namespace stats
