// SPDX-License-Identifier: MIT
#include "stats/numeric/jet.h"

namespace stats {

LogNormalCdf logNormalCdfAt(double z) {
    const double logRoot = std::log(2 * std::numbers::pi) / 2;
    if (z > -20) {
        const double value = z > 0 ? std::log1p(-std::erfc(z / std::numbers::sqrt2) / 2)
                                   : std::log(std::erfc(-z / std::numbers::sqrt2) / 2);
        const double slope = std::exp(-z * z / 2 - value - logRoot);
        return {.value = value, .slope = slope, .bend = -slope * (z + slope)};
    }
    // Far out the complementary error function underflows and z + slope cancels: Mills' ratio by its asymptotic series
    // 1 - 1/z^2 + 3/z^4 - ..., of which the eighth term is 1e-14 at -20.
    const double inverse = 1 / (z * z);
    double rest = 1;
    for (int k = 15; k >= 3; k -= 2) rest = 1 - k * inverse * rest;
    const double series = 1 - inverse * rest;
    return {.value = -z * z / 2 - std::log(-z) - logRoot + std::log(series),
            .slope = -z / series,
            .bend = -rest / (series * series)};  // z + slope is -rest / (z series)
}

}  // namespace stats
