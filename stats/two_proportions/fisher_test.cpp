// SPDX-License-Identifier: MIT
#include "stats/two_proportions/fisher_test.h"

#include <algorithm>

#include "stats/numeric/hypergeometric.h"

namespace stats {
namespace {

constexpr double equallyLikely = 1e-7;

struct FisherSums {
    double below{}, above{}, lessLikely{}, asLikely{}, observed{};
};

FisherSums fisherSums(const CountProbabilities& law, int successes1) {
    FisherSums sums;
    const int index = successes1 - law.first;
    const auto size = static_cast<int>(law.probabilities.size());
    // Outside the run the probability is below the smallest double.
    if (index >= 0 && index < size) sums.observed = law.probabilities[static_cast<std::size_t>(index)];
    for (int i = 0; i < size; ++i) {
        const double each = law.probabilities[static_cast<std::size_t>(i)];
        if (i < index) sums.below += each;
        if (i > index) sums.above += each;
        if (each > sums.observed * (1 + equallyLikely)) continue;
        (each < sums.observed * (1 - equallyLikely) ? sums.lessLikely : sums.asLikely) += each;
    }
    return sums;
}

}  // namespace

FisherTest fisherTest(const TwoCounts& counts) {
    requireTwoCounts("fisherTest", counts);
    const int successes = counts.successes1 + counts.successes2;
    if (std::max(0, successes - counts.trials2) == std::min(counts.trials1, successes)) return {};
    const CountProbabilities law = hypergeometricProbabilities(counts.trials1, counts.trials2, successes);
    const FisherSums sums = fisherSums(law, counts.successes1);
    FisherTest test;
    test.twoSided = std::min(1.0, sums.lessLikely + sums.asLikely);
    test.less = std::min(1.0, sums.below + sums.observed);
    test.greater = std::min(1.0, sums.above + sums.observed);
    test.midTwoSided = sums.lessLikely + sums.asLikely / 2;
    test.midLess = sums.below + sums.observed / 2;
    test.midGreater = sums.above + sums.observed / 2;
    test.midCentral = std::min(1.0, 2 * std::min(test.midLess, test.midGreater));
    return test;
}

}  // namespace stats
