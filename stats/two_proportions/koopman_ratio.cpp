// SPDX-License-Identifier: MIT
#include "stats/two_proportions/koopman_ratio.h"

#include <algorithm>
#include <cmath>
#include <limits>

#include "stats/numeric/bracketed_root.h"
#include "stats/numeric/normal_quantile.h"
#include "stats/numeric/require.h"

namespace stats {
namespace {

class RatioScore {
  public:
    RatioScore(const TwoCounts& counts, double z, bool isUnbiased)
        : x1_(counts.successes1), n1_(counts.trials1), x2_(counts.successes2), n2_(counts.trials2), z_(z) {
        if (isUnbiased) varianceFactor_ = (n1_ + n2_) / (n1_ + n2_ - 1);
    }

    /// Score of p1 - ratio p2 in standard errors at the restricted rates, compared with z: +1 above, -1 below minus z,
    /// else 0.
    [[nodiscard]] int side(double ratio) const {
        const double second = restrictedSecondRate(ratio);
        const double first = std::min(1.0, ratio * second);
        const double variance =
            varianceFactor_ * (first * (1 - first) / n1_ + ratio * ratio * second * (1 - second) / n2_);
        const double numerator = x1_ / n1_ - ratio * (x2_ / n2_);
        if (std::abs(numerator) <= z_ * std::sqrt(std::max(0.0, variance))) return 0;
        return numerator > 0 ? 1 : -1;
    }

  private:
    // The smaller root of a quadratic, by the product of the roots.
    [[nodiscard]] double restrictedSecondRate(double ratio) const {
        const double a = (n1_ + n2_) * ratio;
        const double b = n1_ * ratio + x1_ + n2_ + x2_ * ratio;
        const double c = x1_ + x2_;
        const double root = std::sqrt(std::max(0.0, b * b - 4 * a * c));
        return std::min({1.0, 1 / ratio, 2 * c / (b + root)});
    }

    double x1_, n1_, x2_, n2_;
    double z_;
    double varianceFactor_{1};
};

RatioEstimate ratioScoreInterval(const TwoCounts& counts, double level, bool isUnbiased) {
    constexpr double infinity = std::numeric_limits<double>::infinity();
    if (counts.trials1 == 0 || counts.trials2 == 0 || (counts.successes1 == 0 && counts.successes2 == 0))
        return {.estimate = {}, .limits = {.low = 0, .high = infinity}};
    const RatioScore score(counts, normalQuantileOfLevel(level), isUnbiased);
    // exp(60) is beyond any ratio that counts of this type can suggest; the score falls with the ratio.
    constexpr double farthest = 60;
    const auto isNotAbove = [&score](double logRatio) { return score.side(std::exp(logRatio)) <= 0; };
    const auto isNotBelow = [&score](double logRatio) { return score.side(std::exp(logRatio)) >= 0; };
    RatioEstimate result;
    result.estimate = counts.successes2 == 0 ? infinity
                                             : static_cast<double>(counts.successes1) / counts.trials1 /
                                                   (static_cast<double>(counts.successes2) / counts.trials2);
    result.limits.low = counts.successes1 == 0 ? 0 : std::exp(lastPointWhere(isNotAbove, farthest, -farthest));
    result.limits.high = counts.successes2 == 0 ? infinity : std::exp(lastPointWhere(isNotBelow, -farthest, farthest));
    return result;
}

}  // namespace

RatioEstimate koopmanRatio(const TwoCounts& counts, double level) {
    requireTwoCounts("koopmanRatio", counts);
    requireLevel("koopmanRatio", level);
    return ratioScoreInterval(counts, level, false);
}

RatioEstimate miettinenNurminenRatio(const TwoCounts& counts, double level) {
    requireTwoCounts("miettinenNurminenRatio", counts);
    requireLevel("miettinenNurminenRatio", level);
    return ratioScoreInterval(counts, level, true);
}

}  // namespace stats
