// SPDX-License-Identifier: MIT
#include "stats/time_to_event/speed_shape.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "stats/numeric/normal_quantile.h"
#include "stats/numeric/require.h"

namespace stats {
namespace {

void requireParameters(const char* function, const SpeedParameters& parameters) {
    if (!std::isfinite(parameters.mu)) throwDomainError(function, "mu", parameters.mu, "finite");
    if (!std::isfinite(parameters.logSigma)) throwDomainError(function, "logSigma", parameters.logSigma, "finite");
}

}  // namespace

double speedShare(SpeedShape shape, const SpeedParameters& parameters, double day) {
    requireParameters("speedShare", parameters);
    if (!(day >= 0)) throwDomainError("speedShare", "day", day, "0 or more");
    if (day == 0) return 0;
    if (std::isinf(day)) return 1;
    const double distance = std::log(day) - parameters.mu;
    // A spread of 0 to all digits makes the curve a jump at its median.
    const double z = distance == 0 ? 0 : distance / std::exp(parameters.logSigma);
    switch (shape) {
        case SpeedShape::Weibull:
            return -std::expm1(-std::exp(z));
        case SpeedShape::LogNormal:
            return std::erfc(-z / std::numbers::sqrt2) / 2;
        case SpeedShape::LogLogistic:
            return 1 / (1 + std::exp(-z));
    }
    return 0;
}

double standardSpeedQuantile(SpeedShape shape, double share) {
    if (!(share > 0 && share < 1)) throwDomainError("standardSpeedQuantile", "share", share, "between 0 and 1");
    switch (shape) {
        case SpeedShape::Weibull:
            return std::log(-std::log1p(-share));
        case SpeedShape::LogNormal:
            return normalQuantile(share);
        case SpeedShape::LogLogistic:
            return std::log(share) - std::log1p(-share);
    }
    return 0;
}

double speedQuantile(SpeedShape shape, const SpeedParameters& parameters, double share) {
    requireParameters("speedQuantile", parameters);
    if (!(share > 0 && share < 1)) throwDomainError("speedQuantile", "share", share, "between 0 and 1");
    const double w = standardSpeedQuantile(shape, share);
    const double logDay = w == 0 ? parameters.mu : parameters.mu + std::exp(parameters.logSigma) * w;
    return std::exp(std::clamp(logDay, -700.0, 700.0));
}

}  // namespace stats
