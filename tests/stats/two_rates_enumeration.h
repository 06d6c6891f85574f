// SPDX-License-Identifier: MIT
// Slow and plain: sums over every outcome of two arms, in long double, to check the quick ways against.
#pragma once

#include <functional>
#include <vector>

#include "stats/two_proportions/two_counts.h"

namespace enumeration {

/// Number of ways, exact in long double up to 60 things.
[[nodiscard]] long double ways(int things, int chosen);
[[nodiscard]] long double binomial(int trials, int successes, long double p);

/// Tables with up to `mostTrials` an arm, drawn at random, every third with an arm in which none or all succeed. The same for a seed.
[[nodiscard]] std::vector<stats::TwoCounts> randomTables(int howMany, int mostTrials, unsigned seed);
/// Every table with these arms.
[[nodiscard]] std::vector<stats::TwoCounts> tablesOf(int trials1, int trials2);
/// Every table with these arms and this many successes in all.
[[nodiscard]] std::vector<stats::TwoCounts> tablesOf(int trials1, int trials2, int successes);

/// The largest probability, over a fine grid of the shared rate, of the tables that `isExtreme`. It can only be too small.
[[nodiscard]] double largestProbability(int trials1, int trials2,
                                        const std::function<bool(const stats::TwoCounts&)>& isExtreme);

/// Score statistic of the hypothesis p1 = shift + factor p2, with the restricted rates found by ternary search on the log likelihood.
[[nodiscard]] double scoreStatistic(const stats::TwoCounts& counts, double shift, double factor);

}  // namespace enumeration
