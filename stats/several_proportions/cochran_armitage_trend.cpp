// SPDX-License-Identifier: MIT
#include "stats/several_proportions/cochran_armitage_trend.h"

#include <cmath>
#include <cstddef>

#include "stats/numeric/distribution_tails.h"
#include "stats/numeric/require.h"

namespace stats {

CochranArmitageTrend cochranArmitageTrend(std::span<const ArmCount> arms, std::span<const double> scores) {
    requireArms("cochranArmitageTrend", arms);
    if (scores.size() != arms.size()) {
        throwDomainError("cochranArmitageTrend", "number of scores", static_cast<double>(scores.size()),
                         "that of the arms");
    }
    double successes = 0, trials = 0, weighted = 0;
    std::optional<double> oneScore;
    bool doScoresDiffer = false;
    for (std::size_t i = 0; i < arms.size(); ++i) {
        requireScore("cochranArmitageTrend", scores[i]);
        if (arms[i].trials == 0) continue;
        if (!oneScore) oneScore = scores[i];
        doScoresDiffer = doScoresDiffer || scores[i] != *oneScore;
        successes += arms[i].successes;
        trials += arms[i].trials;
        weighted += arms[i].trials * scores[i];
    }
    CochranArmitageTrend trend;
    if (!doScoresDiffer || successes == 0 || successes == trials) return trend;
    const double mean = weighted / trials, share = successes / trials;
    double sum = 0, squares = 0;
    for (std::size_t i = 0; i < arms.size(); ++i) {
        const double distance = scores[i] - mean;
        // x - n P instead of x: the sum is the same, and equal rates give 0.
        sum += (arms[i].successes - arms[i].trials * share) * distance;
        squares += arms[i].trials * distance * distance;
    }
    if (squares == 0) return trend;
    const double z = sum / std::sqrt(share * (1 - share) * squares);
    trend.z = z;
    trend.chiSquare = z * z;
    trend.chiSquareOfN1 = z * z * (trials - 1) / trials;
    trend.slope = sum / squares;
    trend.p = chiSquareTail(z * z, 1);
    return trend;
}

}  // namespace stats
