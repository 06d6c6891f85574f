// SPDX-License-Identifier: MIT
#include "stats/cost/cost_per_success.h"

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <string_view>

#include "stats/numeric/require.h"
#include "stats/overdispersion/rate_law.h"

namespace stats {

double chanceCheaper(const CostOfTrials& first, const CostOfTrials& second) {
    constexpr std::string_view function = "chanceCheaper";
    for (const CostOfTrials* one : {&first, &second})
        if (!(one->perTrial >= 0 && std::isfinite(one->perTrial)))
            throwDomainError(function, "perTrial", one->perTrial, "0 <= perTrial, finite");
    const RateLaw law1(function, first.rates), law2(function, second.rates);
    // Cheaper where second.rate * first.perTrial < first.rate * second.perTrial.
    double chance = 0;
    for (const RateLaw::Point& point : law1.points()) {
        const double product = point.rate * second.perTrial;
        if (first.perTrial == 0)
            chance += point.weight * (product > 0 ? 1 : 0.5);
        else
            chance += point.weight * law2.below(product / first.perTrial);
    }
    return std::clamp(chance, 0.0, 1.0);
}

}  // namespace stats
