// SPDX-License-Identifier: MIT
#include "stats/strata/stratum.h"

#include "stats/numeric/require.h"

namespace stats {

bool isInformative(const Stratum& stratum) {
    const long long successes = static_cast<long long>(stratum.successes1) + stratum.successes2;
    const long long trials = static_cast<long long>(stratum.trials1) + stratum.trials2;
    return stratum.trials1 > 0 && stratum.trials2 > 0 && successes > 0 && successes < trials;
}

void requireStrata(std::string_view function, std::span<const Stratum> strata) {
    for (const Stratum& stratum : strata) {
        requireCounts(function, stratum.successes1, stratum.trials1);
        requireCounts(function, stratum.successes2, stratum.trials2);
    }
}

}  // namespace stats
