// SPDX-License-Identifier: MIT
#include "stats/two_proportions/boschloo_test.h"

#include <algorithm>
#include <cstddef>
#include <vector>

#include "stats/numeric/bernstein_maximum.h"
#include "stats/numeric/hypergeometric.h"
#include "stats/two_proportions/fisher_test.h"

namespace stats {
namespace {

constexpr double tiedFisherP = 1e-10;
constexpr double tiedLikelihood = 1e-7;

// Given the total, the tables that count as extreme are those with a p of at most the observed one; their probability
// is the largest such p.
double largestTailUpTo(auto begin, auto end, double threshold) {
    double tail = 0;
    for (auto each = begin; each != end; ++each) {
        if (tail + *each > threshold) break;
        tail += *each;
    }
    return std::min(1.0, tail);
}

// The largest two-sided Fisher p up to the threshold, of the tables with one total. `law` has one hill, so its values
// come in ascending order by taking the smaller end each time.
double largestTwoSidedUpTo(const std::vector<double>& law, double threshold) {
    std::vector<double> ascending;
    ascending.reserve(law.size());
    for (std::size_t left = 0, right = law.size(); left < right;)
        ascending.push_back(law[left] <= law[right - 1] ? law[left++] : law[--right]);
    double sum = 0, largest = 0;
    std::size_t taken = 0;
    for (const double likelihood : ascending) {
        while (taken < ascending.size() && ascending[taken] <= likelihood * (1 + tiedLikelihood))
            sum += ascending[taken++];
        if (sum > threshold) break;
        largest = sum;
    }
    return std::min(1.0, largest);
}

}  // namespace

BoschlooTest boschlooTest(const TwoCounts& counts) {
    requireTwoCounts("boschlooTest", counts);
    if (counts.trials1 == 0 || counts.trials2 == 0) return {};
    const FisherTest fisher = fisherTest(counts);
    const auto totals = static_cast<std::size_t>(counts.trials1 + counts.trials2) + 1;
    std::vector<double> less(totals), greater(totals), minlike(totals);
    for (std::size_t total = 0; total < totals; ++total) {
        const std::vector<double> law =
            hypergeometricProbabilities(counts.trials1, counts.trials2, static_cast<int>(total)).probabilities;
        less[total] = largestTailUpTo(law.begin(), law.end(), fisher.less * (1 + tiedFisherP));
        greater[total] = largestTailUpTo(law.rbegin(), law.rend(), fisher.greater * (1 + tiedFisherP));
        minlike[total] = largestTwoSidedUpTo(law, fisher.twoSided * (1 + tiedFisherP));
    }
    BoschlooTest test;
    test.less = bernsteinMaximum(less);
    test.greater = bernsteinMaximum(greater);
    test.central = std::min(1.0, 2 * std::min(test.less, test.greater));
    test.minlike = bernsteinMaximum(minlike);
    return test;
}

}  // namespace stats
