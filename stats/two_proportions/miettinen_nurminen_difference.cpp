// SPDX-License-Identifier: MIT
#include "stats/two_proportions/miettinen_nurminen_difference.h"

#include <cmath>

#include "stats/numeric/bracketed_root.h"
#include "stats/numeric/normal_quantile.h"
#include "stats/numeric/require.h"
#include "stats/two_proportions/difference_score.h"

namespace stats {
namespace {

Interval differenceScoreInterval(const TwoCounts& counts, double level, bool isUnbiased) {
    if (counts.trials1 == 0 || counts.trials2 == 0) return {.low = -1, .high = 1};
    const DifferenceScore score(counts, isUnbiased);
    const double z = normalQuantileOfLevel(level);
    const auto holds = [&score, z](double difference) {
        return std::abs(score.observed() - difference) <= z * score.standardError(difference);
    };
    const bool isLowest = counts.successes1 == 0 && counts.successes2 == counts.trials2;
    const bool isHighest = counts.successes1 == counts.trials1 && counts.successes2 == 0;
    return {.low = isLowest ? -1 : lastPointWhere(holds, score.observed(), -1),
            .high = isHighest ? 1 : lastPointWhere(holds, score.observed(), 1)};
}

}  // namespace

Interval miettinenNurminenDifference(const TwoCounts& counts, double level) {
    requireTwoCounts("miettinenNurminenDifference", counts);
    requireLevel("miettinenNurminenDifference", level);
    return differenceScoreInterval(counts, level, true);
}

Interval meeDifference(const TwoCounts& counts, double level) {
    requireTwoCounts("meeDifference", counts);
    requireLevel("meeDifference", level);
    return differenceScoreInterval(counts, level, false);
}

}  // namespace stats
