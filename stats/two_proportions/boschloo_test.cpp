// SPDX-License-Identifier: MIT
#include "stats/two_proportions/boschloo_test.h"

#include <algorithm>
#include <cstddef>
#include <vector>

#include "stats/numeric/bernstein_maximum.h"
#include "stats/numeric/hypergeometric.h"
#include "stats/two_proportions/fisher_ordering.h"
#include "stats/two_proportions/fisher_test.h"

namespace stats {

BoschlooTest boschlooTest(const TwoCounts& counts) {
    requireTwoCounts("boschlooTest", counts);
    if (counts.trials1 == 0 || counts.trials2 == 0) return {};
    const FisherTest fisher = fisherTest(counts);
    const auto totals = static_cast<std::size_t>(counts.trials1 + counts.trials2) + 1;
    std::vector<double> less(totals), greater(totals), minlike(totals);
    for (std::size_t total = 0; total < totals; ++total) {
        const CountProbabilities law =
            hypergeometricProbabilities(counts.trials1, counts.trials2, static_cast<int>(total));
        less[total] = largestFisherPUpTo(fisherPs(law, FisherSide::Less), fisher.less);
        greater[total] = largestFisherPUpTo(fisherPs(law, FisherSide::Greater), fisher.greater);
        minlike[total] = largestFisherPUpTo(fisherPs(law, FisherSide::TwoSided), fisher.twoSided);
    }
    BoschlooTest test;
    test.less = bernsteinMaximum(less);
    test.greater = bernsteinMaximum(greater);
    test.central = std::min(1.0, 2 * std::min(test.less, test.greater));
    test.minlike = bernsteinMaximum(minlike);
    return test;
}

}  // namespace stats
