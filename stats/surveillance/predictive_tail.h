// SPDX-License-Identifier: MIT
// Is a batch out of the ordinary? How likely as few rooted, or fewer, would be, going by the grower's own past batches
// of the plant and method. A chart over time: control_limits.h.
#pragma once

#include "stats/overdispersion/beta_binomial_posterior.h"

namespace stats {

struct PredictiveTail {
    double fewer{};  // P(fewer than seen)
    double asFewOrFewer{1};
    double middle{0.5};  // halfway between: fewer + P(as many) / 2, the one to show
    double expected{};   // mean count foretold
    int usualFewest{};   // the counts between which at least nine tenths were foretold, at most a twentieth on
    int usualMost{};     // either side
    int pastBatches{};   // with trials
};

/// Where a batch of `successes` of `trials` lies in what past batches foretold: beta-binomial with the posterior of
/// rate and spread, so not knowing either is part of it. With few past batches the law is wide and nothing looks odd
/// lightly; with none it is the prior's.
///
/// fewer + u (asFewOrFewer - fewer) with u drawn evenly from 0 to 1 is evenly spread when rate and spread really come
/// from the prior; `middle` is the same without drawing. At one fixed true rate and correlation that is only nearly so.
/// Simulated with batches of 20, mean of true rates 0.3, 0.6 and 0.9: per cent of batches like their past ones whose
/// drawn tail is at most 5 %, spread learnt by pooledSpread() from the past batches and from 5 other groups of three:
///
///     true correlation           0     0.05   0.1    0.2
///     1 past batch, no group     0.0   0.2    0.7    4.2
///     3 past batches, no group   0.2   1.0    2.6    5.7
///     10 past batches, no group  1.4   3.1    4.2    5.7
///     3 past batches, 5 groups   2.0   3.7    5.3    5.8
///
/// So what is called odd is odd; with few records little is called odd at all. With a prior of mean 0.1 the first two
/// rows would end in 8.6 and 9.9.
///
/// Domain    as requirePastBatches(), 0 <= successes <= trials <= 20 000; else std::domain_error. The batch judged must
///           not be among past.batches.
/// Returns   a batch without trials: fewer 0, asFewOrFewer 1, middle 1/2.
/// Assumes   the batch is like the past ones; that is what a small tail speaks against.
/// Accuracy  as predictiveProbabilities().
/// Source    Aitchison and Dunsmore (1975), Statistical Prediction Analysis, ch. 2; randomised tail: Smith (1985), J.
///           Forecast. 4, 283-291; half of the observed: Lancaster (1961), J. Am. Stat. Assoc. 56, 223-234.
[[nodiscard]] PredictiveTail predictiveTail(int successes, int trials, const PastBatches& past);

}  // namespace stats
