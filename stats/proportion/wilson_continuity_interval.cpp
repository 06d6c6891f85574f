// SPDX-License-Identifier: MIT
#include "stats/proportion/wilson_continuity_interval.h"

#include <cmath>

#include "stats/numeric/normal_quantile.h"
#include "stats/numeric/require.h"

namespace stats {
namespace {

// The lower limit: the smaller root of (n + z^2) p^2 - (2x - 1 + z^2) p + (x - 1/2)^2 / n, by the product of the roots.
double wilsonContinuityLow(double x, double n, double z) {
    const double corrected = x - 0.5;
    const double middle = 2 * corrected + z * z;
    const double reach = z * std::sqrt(z * z + 4 * corrected * (n - corrected) / n);
    return 2 * corrected * (corrected / n) / (middle + reach);
}

}  // namespace

Interval wilsonContinuityInterval(int successes, int trials, double level) {
    requireCounts("wilsonContinuityInterval", successes, trials);
    requireLevel("wilsonContinuityInterval", level);
    const double n = trials, z = normalQuantileOfLevel(level);
    return {.low = successes == 0 ? 0.0 : wilsonContinuityLow(successes, n, z),
            .high = successes == trials ? 1.0 : 1 - wilsonContinuityLow(trials - successes, n, z)};
}

}  // namespace stats
