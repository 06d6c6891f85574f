// SPDX-License-Identifier: MIT
#include "stats/two_proportions/difference_score.h"

#include <algorithm>
#include <cmath>

#include "stats/numeric/bracketed_root.h"

namespace stats {

DifferenceScore::DifferenceScore(const TwoCounts& counts, bool isUnbiased)
    : rooted1_(counts.successes1),
      rooted2_(counts.successes2),
      not1_(counts.trials1 - counts.successes1),
      not2_(counts.trials2 - counts.successes2),
      observed_(rooted1_ / counts.trials1 - rooted2_ / counts.trials2) {
    const double all = static_cast<double>(counts.trials1) + counts.trials2;
    varianceFactor_ = isUnbiased ? all / (all - 1) : 1;
}

double DifferenceScore::standardError(double difference) const {
    const double second = restrictedSecondRate(difference);
    const double first = std::clamp(second + difference, 0.0, 1.0);
    const double variance =
        (first * (1 - first) / (rooted1_ + not1_) + second * (1 - second) / (rooted2_ + not2_)) * varianceFactor_;
    return std::sqrt(std::max(0.0, variance));
}

// The log likelihood is concave in the second rate, so its slope changes sign once.
double DifferenceScore::restrictedSecondRate(double difference) const {
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

}  // namespace stats
