// SPDX-License-Identifier: MIT
#include "stats/two_proportions/two_counts.h"

#include "stats/numeric/require.h"

namespace stats {

void requireTwoCounts(std::string_view function, const TwoCounts& counts) {
    requireCounts(function, counts.successes1, counts.trials1);
    requireCounts(function, counts.successes2, counts.trials2);
    constexpr int mostTrials = 1'000'000'000;
    for (const int trials : {counts.trials1, counts.trials2})
        if (trials > mostTrials) throwDomainError(function, "trials", trials, "at most 1000000000");
}

}  // namespace stats
