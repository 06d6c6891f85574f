// SPDX-License-Identifier: MIT
#include "stats/two_proportions/katz_ratio.h"

#include <cmath>
#include <limits>

#include "stats/numeric/normal_quantile.h"
#include "stats/numeric/require.h"

namespace stats {

KatzRatio katzRatio(const TwoCounts& counts, double level) {
    requireTwoCounts("katzRatio", counts);
    requireLevel("katzRatio", level);
    constexpr double infinity = std::numeric_limits<double>::infinity();
    KatzRatio result{.estimate = {}, .limits = {.low = 0, .high = infinity}, .standardErrorOfLog = {}};
    const double x1 = counts.successes1, n1 = counts.trials1, x2 = counts.successes2, n2 = counts.trials2;
    if (n1 == 0 || n2 == 0 || (x1 == 0 && x2 == 0)) return result;
    result.estimate = x2 == 0 ? infinity : x1 * n2 / (n1 * x2);
    result.standardErrorOfLog = infinity;
    if (x1 == 0 || x2 == 0) return result;
    const double error = std::sqrt((n1 - x1) / (n1 * x1) + (n2 - x2) / (n2 * x2));
    const double factor = std::exp(normalQuantileOfLevel(level) * error);
    result.standardErrorOfLog = error;
    result.limits = {.low = *result.estimate / factor, .high = *result.estimate * factor};
    return result;
}

}  // namespace stats
