// SPDX-License-Identifier: MIT
#include "stats/proportion/agresti_coull_interval.h"

#include <algorithm>
#include <cmath>

#include "stats/numeric/normal_quantile.h"
#include "stats/numeric/require.h"

namespace stats {

Interval agrestiCoullInterval(int successes, int trials, double level) {
    const Interval uncut = agrestiCoullUncut(successes, trials, level);
    return {.low = successes == 0 ? 0.0 : std::max(0.0, uncut.low),
            .high = successes == trials ? 1.0 : std::min(1.0, uncut.high)};
}

Interval agrestiCoullUncut(int successes, int trials, double level) {
    requireCounts("agrestiCoullInterval", successes, trials);
    requireLevel("agrestiCoullInterval", level);
    const double z = normalQuantileOfLevel(level);
    const double n = trials + z * z;
    const double centre = (successes + z * z / 2) / n;
    const double reach = z * std::sqrt(centre * (1 - centre) / n);
    return {.low = centre - reach, .high = centre + reach};
}

}  // namespace stats
