// SPDX-License-Identifier: MIT
#include "stats/two_proportions/miettinen_nurminen_difference.h"

#include <algorithm>
#include <cmath>

#include "stats/numeric/bracketed_root.h"
#include "stats/numeric/normal_quantile.h"
#include "stats/numeric/require.h"

namespace stats {
namespace {

class DifferenceScore {
  public:
    DifferenceScore(const TwoCounts& counts, double z, bool isUnbiased)
        : rooted1_(counts.successes1),
          rooted2_(counts.successes2),
          not1_(counts.trials1 - counts.successes1),
          not2_(counts.trials2 - counts.successes2),
          observed_(rooted1_ / counts.trials1 - rooted2_ / counts.trials2),
          z_(z) {
        const double all = static_cast<double>(counts.trials1) + counts.trials2;
        varianceFactor_ = isUnbiased ? all / (all - 1) : 1;
    }

    [[nodiscard]] double observed() const { return observed_; }

    [[nodiscard]] bool doesNotReject(double difference) const {
        const double second = restrictedSecondRate(difference);
        const double first = std::clamp(second + difference, 0.0, 1.0);
        const double variance =
            (first * (1 - first) / (rooted1_ + not1_) + second * (1 - second) / (rooted2_ + not2_)) * varianceFactor_;
        return std::abs(observed_ - difference) <= z_ * std::sqrt(std::max(0.0, variance));
    }

  private:
    // The log likelihood is concave in the second rate, so its slope changes sign once.
    [[nodiscard]] double restrictedSecondRate(double difference) const {
        const double low = std::max(0.0, -difference);
        const double high = std::min(1.0, 1 - difference);
        const auto rises = [&](double second) {
            const double first = second + difference;
            double slope = 0;
            if (rooted1_ > 0) slope += rooted1_ / first;
            if (not1_ > 0) slope -= not1_ / (1 - first);
            if (rooted2_ > 0) slope += rooted2_ / second;
            if (not2_ > 0) slope -= not2_ / (1 - second);
            return slope >= 0;
        };
        return low < high ? lastPointWhere(rises, low, high) : low;
    }

    double rooted1_, rooted2_, not1_, not2_;
    double observed_;
    double z_;
    double varianceFactor_{1};
};

Interval differenceScoreInterval(const TwoCounts& counts, double level, bool isUnbiased) {
    if (counts.trials1 == 0 || counts.trials2 == 0) return {.low = -1, .high = 1};
    const DifferenceScore score(counts, normalQuantileOfLevel(level), isUnbiased);
    const auto holds = [&score](double difference) { return score.doesNotReject(difference); };
    const bool isLowest = counts.successes1 == 0 && counts.successes2 == counts.trials2;
    const bool isHighest = counts.successes1 == counts.trials1 && counts.successes2 == 0;
    return {.low = isLowest ? -1 : lastPointWhere(holds, score.observed(), -1),
            .high = isHighest ? 1 : lastPointWhere(holds, score.observed(), 1)};
}

}  // namespace

Interval miettinenNurminenDifference(const TwoCounts& counts, double level) {
    requireTwoCounts("miettinenNurminenDifference", counts);
    requireLevel("miettinenNurminenDifference", level);
    return differenceScoreInterval(counts, level, true);
}

Interval meeDifference(const TwoCounts& counts, double level) {
    requireTwoCounts("meeDifference", counts);
    requireLevel("meeDifference", level);
    return differenceScoreInterval(counts, level, false);
}

}  // namespace stats
