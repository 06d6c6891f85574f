// SPDX-License-Identifier: MIT
// Fisher's p of every table with one total, for tests that order tables by it: Boschloo's, and the power of both.
#pragma once

#include <span>
#include <vector>

#include "stats/numeric/hypergeometric.h"

namespace stats {

/// What a small p speaks for: the first arm's rate is smaller, larger, or either (tables no more likely than the
/// observed, not twice one tail).
enum class FisherSide { Less, Greater, TwoSided };

/// One p for each table of `law` = hypergeometricProbabilities(trials1, trials2, total), in its order. Two tables count
/// as equally likely when their probabilities agree within 1e-7.
[[nodiscard]] std::vector<double> fisherPs(const CountProbabilities& law, FisherSide side);

/// The largest of them that is at most `threshold`, ties within 1e-10 relative; 0 where none is. It is also the
/// probability, given the total, of all tables with a p of at most the threshold.
[[nodiscard]] double largestFisherPUpTo(std::span<const double> ps, double threshold);

/// Whether a p is at most the threshold, with the same room for ties.
[[nodiscard]] bool isFisherPUpTo(double p, double threshold);

}  // namespace stats
