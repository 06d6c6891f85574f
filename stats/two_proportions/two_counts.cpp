// SPDX-License-Identifier: MIT
#include "stats/two_proportions/two_counts.h"

#include "stats/numeric/require.h"

namespace stats {

void requireTwoCounts(std::string_view function, const TwoCounts& counts) {
    requireCounts(function, counts.successes1, counts.trials1);
    requireCounts(function, counts.successes2, counts.trials2);
}

}  // namespace stats
