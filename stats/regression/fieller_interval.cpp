// SPDX-License-Identifier: MIT
#include "stats/regression/fieller_interval.h"

#include <algorithm>
#include <cmath>

#include "stats/numeric/require.h"

namespace stats {

std::optional<Interval> fiellerInterval(const RatioOfEstimates& estimates, double quantile) {
    const auto& [numerator, denominator, numeratorVariance, denominatorVariance, covariance] = estimates;
    for (const double each : {numerator, denominator, covariance}) {
        if (!std::isfinite(each)) throwDomainError("fiellerInterval", "estimate", each, "finite");
    }
    for (const double each : {numeratorVariance, denominatorVariance}) {
        if (!(each >= 0 && std::isfinite(each))) throwDomainError("fiellerInterval", "variance", each, "0 or more");
    }
    if (!(quantile > 0 && std::isfinite(quantile))) {
        throwDomainError("fiellerInterval", "quantile", quantile, "above 0 and finite");
    }
    // a r^2 - 2 b r + c <= 0
    const double square = quantile * quantile;
    const double a = denominator * denominator - square * denominatorVariance;
    const double b = numerator * denominator - square * covariance;
    const double c = numerator * numerator - square * numeratorVariance;
    if (!(a > 0)) return {};
    const double root = std::sqrt(std::max(0.0, b * b - a * c));
    const double longer = b >= 0 ? b + root : b - root;
    const double one = longer / a, other = longer == 0 ? 0 : c / longer;
    if (!std::isfinite(one) || !std::isfinite(other)) return {};
    return Interval{.low = std::min(one, other), .high = std::max(one, other)};
}

}  // namespace stats
