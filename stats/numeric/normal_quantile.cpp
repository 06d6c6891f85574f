// SPDX-License-Identifier: MIT
#include "stats/numeric/normal_quantile.h"

#include <boost/math/special_functions/erf.hpp>
#include <numbers>

#include "stats/numeric/boost_policy.h"
#include "stats/numeric/require.h"

namespace stats {

double normalQuantile(double probability) {
    if (!(probability > 0 && probability < 1))
        throwDomainError("normalQuantile", "probability", probability, "between 0 and 1");
    return -std::numbers::sqrt2 * boost::math::erfc_inv(2 * probability, BoostPolicy{});
}

double normalQuantileOfLevel(double level) {
    requireLevel("normalQuantileOfLevel", level);
    return std::numbers::sqrt2 * boost::math::erf_inv(level, BoostPolicy{});
}

}  // namespace stats
