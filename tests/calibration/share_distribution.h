// SPDX-License-Identifier: MIT
// How the true shares of trays scatter around the rate of their arm.
#pragma once

#include "stats/numeric/seeded_random.h"

namespace calibration {

/// Both have mean `rate` and variance correlation x rate x (1 - rate), so the same intra-class correlation.
enum class Spread { Beta, LogitNormal };

class ShareDistribution {
  public:
    /// 0 < rate < 1, 0 <= correlation < 1. Correlation 0: every tray has the rate itself.
    ShareDistribution(double rate, double correlation, Spread spread);
    [[nodiscard]] double draw(stats::SeededRandom& random) const;

  private:
    double rate_{}, correlation_{};
    Spread spread_{};
    double middle_{}, width_{};  // of the logits, where they are normal
};

}  // namespace calibration
