// SPDX-License-Identifier: MIT
#include "stats/overdispersion/rate_law.h"

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <map>
#include <numbers>

#include "stats/numeric/require.h"

namespace stats {
namespace {

constexpr double rightAngle = std::numbers::pi / 2;

double angleOf(double rate) {
    return std::asin(std::sqrt(std::clamp(rate, 0.0, 1.0)));
}

}  // namespace

RateLaw::RateLaw(std::string_view function, const std::vector<RatePoint>& points) {
    std::map<double, double> weights;
    double sum = 0;
    for (const RatePoint& point : points) {
        if (!(point.rate > 0 && point.rate < 1)) throwDomainError(function, "rate", point.rate, "0 < rate < 1");
        if (!(point.weight > 0)) throwDomainError(function, "weight", point.weight, "weight > 0");
        weights[point.rate] += point.weight;
        sum += point.weight;
    }
    if (!(std::abs(sum - 1) <= 1e-6)) throwDomainError(function, "sum of weights", sum, "1 within 1e-6");
    double before = 0;
    for (const auto& [rate, weight] : weights) {
        const double share = weight / sum;
        points_.push_back({.rate = rate, .weight = share});
        angles_.push_back(angleOf(rate));
        below_.push_back(before + share / 2);
        before += share;
    }
}

double RateLaw::below(double bound) const {
    const double angle = angleOf(bound);
    const auto after = std::ranges::upper_bound(angles_, angle);
    const auto index = static_cast<std::size_t>(after - angles_.begin());
    const bool isFirst = after == angles_.begin(), isLast = after == angles_.end();
    const double fromAngle = isFirst ? 0 : angles_[index - 1], toAngle = isLast ? rightAngle : *after;
    const double from = isFirst ? 0 : below_[index - 1], to = isLast ? 1 : below_[index];
    if (toAngle == fromAngle) return to;
    return from + (to - from) * (angle - fromAngle) / (toAngle - fromAngle);
}

double RateLaw::quantile(double share) const {
    const auto after = std::ranges::upper_bound(below_, share);
    const auto index = static_cast<std::size_t>(after - below_.begin());
    const bool isFirst = after == below_.begin(), isLast = after == below_.end();
    const double from = isFirst ? 0 : below_[index - 1], to = isLast ? 1 : *after;
    const double fromAngle = isFirst ? 0 : angles_[index - 1], toAngle = isLast ? rightAngle : angles_[index];
    const double part = to == from ? 1 : std::clamp((share - from) / (to - from), 0.0, 1.0);
    const double sine = std::sin(fromAngle + (toAngle - fromAngle) * part);
    return sine * sine;
}

Interval RateLaw::interval(double level) const {
    requireLevel("RateLaw::interval", level);
    return {.low = quantile((1 - level) / 2), .high = quantile((1 + level) / 2)};
}

}  // namespace stats
