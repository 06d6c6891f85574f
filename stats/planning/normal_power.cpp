// SPDX-License-Identifier: MIT
#include "stats/planning/normal_power.h"

#include <cmath>
#include <numbers>

#include "stats/numeric/normal_quantile.h"
#include "stats/numeric/require.h"

namespace stats {
namespace {

struct PlannedDifference {
    double distance;          // between the rates
    double deviationIfEqual;  // of the difference of two trials, when both have the mean rate
    double deviation;         // when each has its own
};

PlannedDifference plannedDifference(const char* function, double rate1, double rate2, double alpha) {
    for (const double rate : {rate1, rate2})
        if (!(rate >= 0 && rate <= 1)) throwDomainError(function, "rate", rate, "from 0 to 1");
    if (!(alpha > 0 && alpha < 1)) throwDomainError(function, "alpha", alpha, "between 0 and 1");
    const double sum = rate1 + rate2;
    return {.distance = std::abs(rate1 - rate2),
            .deviationIfEqual = std::sqrt(sum * (1 - sum / 2)),
            .deviation = std::sqrt(rate1 * (1 - rate1) + rate2 * (1 - rate2))};
}

}  // namespace

double normalPower(double trials, double rate1, double rate2, double alpha) {
    const PlannedDifference planned = plannedDifference("normalPower", rate1, rate2, alpha);
    if (!(trials > 0 && std::isfinite(trials))) throwDomainError("normalPower", "trials", trials, "above 0");
    if (rate1 == rate2) return alpha / 2;
    const double beyond =
        std::sqrt(trials) * planned.distance - normalQuantile(1 - alpha / 2) * planned.deviationIfEqual;
    if (planned.deviation == 0) return beyond >= 0 ? 1 : 0;
    return std::erfc(-beyond / planned.deviation / std::numbers::sqrt2) / 2;
}

std::optional<double> trialsForNormalPower(double power, double rate1, double rate2, double alpha) {
    const PlannedDifference planned = plannedDifference("trialsForNormalPower", rate1, rate2, alpha);
    if (!(power > 0 && power < 1)) throwDomainError("trialsForNormalPower", "power", power, "between 0 and 1");
    const double root =
        normalQuantile(1 - alpha / 2) * planned.deviationIfEqual + normalQuantile(power) * planned.deviation;
    const double trials = root > 0 && planned.distance > 0 ? std::pow(root / planned.distance, 2) : 0;
    if (!(trials > 0 && std::isfinite(trials)) || power <= alpha / 2) return std::nullopt;
    return trials;
}

}  // namespace stats
