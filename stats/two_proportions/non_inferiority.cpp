// SPDX-License-Identifier: MIT
#include "stats/two_proportions/non_inferiority.h"

#include <cmath>
#include <numbers>

#include "stats/numeric/require.h"
#include "stats/two_proportions/difference_score.h"
#include "stats/two_proportions/miettinen_nurminen_difference.h"

namespace stats {

void requireMargin(std::string_view function, double margin) {
    if (!(margin > 0 && margin < 1)) throwDomainError(function, "margin", margin, "between 0 and 1");
}

NonInferiority nonInferiority(const TwoCounts& counts, double margin, double level) {
    requireTwoCounts("nonInferiority", counts);
    requireMargin("nonInferiority", margin);
    requireLevel("nonInferiority", level);
    if (counts.trials1 == 0 || counts.trials2 == 0) return {};
    // Rates that differ by less than 1 are not both 0 or 1, so the standard error is above 0.
    const DifferenceScore score(counts, true);
    const double z = (score.observed() + margin) / score.standardError(-margin);
    const Interval limits = miettinenNurminenDifference(counts, level);
    return {.difference = score.observed(),
            .limits = limits,
            .z = z,
            .p = std::erfc(z / std::numbers::sqrt2) / 2,
            .isShown = limits.low > -margin};
}

}  // namespace stats
