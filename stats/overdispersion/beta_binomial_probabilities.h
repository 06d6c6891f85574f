// SPDX-License-Identifier: MIT
// The whole beta-binomial law at once, for sums over every count. One count: betaBinomialLogProbability().
#pragma once

#include <vector>

namespace stats {

/// P(0), P(1), ... P(trials) successes in one tray whose rate is drawn from a beta distribution with this mean and
/// intraclass correlation 1 / (a + b + 1): binomial at correlation 0, all or nothing at 1.
///
/// Domain    trials >= 0, 0 <= mean <= 1, 0 <= correlation <= 1; else std::domain_error.
/// Returns   trials + 1 probabilities that sum to 1; those below the smallest double are 0.
/// Accuracy  within (steps from the largest) * 4e-16 relative: products of ratios of neighbours, no gamma functions.
/// Source    Skellam (1948), J. R. Stat. Soc. B 10, 257-261.
[[nodiscard]] std::vector<double> betaBinomialProbabilities(int trials, double mean, double correlation);

}  // namespace stats
