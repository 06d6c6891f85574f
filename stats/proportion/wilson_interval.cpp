// SPDX-License-Identifier: MIT
#include "stats/proportion/wilson_interval.h"

#include <cmath>

#include "stats/numeric/normal_quantile.h"
#include "stats/numeric/require.h"

namespace stats {

Interval wilsonInterval(int successes, int trials, double level) {
    requireCounts("wilsonInterval", successes, trials);
    requireLevel("wilsonInterval", level);
    if (trials == 0) return {.low = 0, .high = 1};
    const double x = successes, n = trials, z = normalQuantileOfLevel(level);
    const double middle = 2 * x + z * z;
    const double reach = z * std::sqrt(z * z + 4 * x * (n - x) / n);
    const double high = (middle + reach) / (2 * (n + z * z));
    return {.low = 2 * x * (x / n) / (middle + reach),  // product of the roots: x^2 / (n (n + z^2))
            .high = successes == trials ? 1.0 : high};  // rounding would give 1 + 2e-16
}

Interval wilsonIntervalOfEffective(double proportion, double trials, double level) {
    if (!(proportion >= 0 && proportion <= 1))
        throwDomainError("wilsonIntervalOfEffective", "proportion", proportion, "from 0 to 1");
    if (!(trials > 0)) throwDomainError("wilsonIntervalOfEffective", "trials", trials, "above 0");
    requireLevel("wilsonIntervalOfEffective", level);
    const double x = proportion * trials, z = normalQuantileOfLevel(level);
    const double middle = 2 * x + z * z;
    const double reach = z * std::sqrt(z * z + 4 * x * (1 - proportion));
    const double high = (middle + reach) / (2 * (trials + z * z));
    return {.low = 2 * x * proportion / (middle + reach), .high = proportion == 1 ? 1.0 : high};
}

}  // namespace stats
