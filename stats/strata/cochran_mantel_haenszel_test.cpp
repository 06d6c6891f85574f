// SPDX-License-Identifier: MIT
#include "stats/strata/cochran_mantel_haenszel_test.h"

#include <algorithm>
#include <cmath>

#include "stats/numeric/distribution_tails.h"

namespace stats {

CochranMantelHaenszelTest cochranMantelHaenszelTest(std::span<const Stratum> strata) {
    requireStrata("cochranMantelHaenszelTest", strata);
    double excess = 0, variance = 0;
    for (const Stratum& stratum : strata) {
        if (!isInformative(stratum)) continue;  // no excess, no variance
        const double n1 = stratum.trials1, n2 = stratum.trials2, n = n1 + n2;
        const double successes = static_cast<double>(stratum.successes1) + stratum.successes2;
        excess += stratum.successes1 - n1 * successes / n;
        variance += n1 * n2 / n * (successes / n) * ((n - successes) / (n - 1));
    }
    if (variance == 0) return {};
    const double corrected = std::max(0.0, std::abs(excess) - 0.5);
    CochranMantelHaenszelTest test;
    test.chiSquare = excess * excess / variance;
    test.p = chiSquareTail(*test.chiSquare, 1);
    test.correctedChiSquare = corrected * corrected / variance;
    test.correctedP = chiSquareTail(*test.correctedChiSquare, 1);
    return test;
}

}  // namespace stats
