// SPDX-License-Identifier: MIT
#include "stats/planning/non_inferiority_power.h"

#include <vector>

#include "stats/numeric/normal_quantile.h"
#include "stats/numeric/require.h"
#include "stats/overdispersion/beta_binomial_probabilities.h"
#include "stats/two_proportions/difference_score.h"
#include "stats/two_proportions/non_inferiority.h"

namespace stats {

double nonInferiorityPower(const PlannedArms& arms, double margin, double level) {
    constexpr const char* function = "nonInferiorityPower";
    constexpr int mostTrials = 1000;
    constexpr double rare = 1e-16;
    for (const int trials : {arms.trials1, arms.trials2})
        if (trials < 0 || trials > mostTrials) throwDomainError(function, "trials", trials, "from 0 to 1000");
    for (const double rate : {arms.rate1, arms.rate2})
        if (!(rate >= 0 && rate <= 1)) throwDomainError(function, "rate", rate, "from 0 to 1");
    requireMargin(function, margin);
    const double quantile = normalQuantileOfLevel(level);
    if (arms.trials1 == 0 || arms.trials2 == 0) return 0;
    const std::vector<double> law1 = betaBinomialProbabilities(arms.trials1, arms.rate1, 0);
    const std::vector<double> law2 = betaBinomialProbabilities(arms.trials2, arms.rate2, 0);
    double power = 0;
    for (int first = 0; first <= arms.trials1; ++first) {
        if (law1[static_cast<std::size_t>(first)] < rare) continue;
        for (int second = 0; second <= arms.trials2; ++second) {
            const double chance = law1[static_cast<std::size_t>(first)] * law2[static_cast<std::size_t>(second)];
            if (chance < rare) continue;
            const DifferenceScore score({first, arms.trials1, second, arms.trials2}, true);
            if (score.observed() + margin > quantile * score.standardError(-margin)) power += chance;
        }
    }
    return power;
}

}  // namespace stats
