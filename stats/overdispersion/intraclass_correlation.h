// SPDX-License-Identifier: MIT
// How much trays differ beyond chance, learnt from a whole logbook: many plants and methods, few trays of each. What
// plans, predictive tails and charts allow for. Of one arm alone: fitBetaBinomial().
#pragma once

#include <optional>
#include <span>
#include <vector>

#include "stats/interval.h"
#include "stats/overdispersion/tray.h"

namespace stats {

/// A beta distribution of the intraclass correlation before any record is seen. The default has mean 0.2 and central
/// 95 % from 0.006 to 0.60. Common practice, no source: chosen by simulation, as the least wide of those tried with
/// which a batch as poor as one in twenty is not called so more often than that, nearly, at any true correlation up to
/// 0.2, also where there are one to three batches and no other record (surveillance/predictive_tail.h has the figures).
struct SpreadPrior {
    double a{1};
    double b{4};
};

struct WeightedCorrelation {
    double correlation{};
    double weight{};
};

enum class SpreadBasis {
    PriorAlone,      // no group could show any spread; the figure is what is usual, not what was seen
    RecordsAndPrior  // weightOfRecords says how much of each
};

struct PooledSpread {
    double correlation{};  // posterior mean: the figure to use
    Interval limits;       // of the posterior: from 0 where 0 is denser than the far end, else equal tails
    SpreadBasis basis{SpreadBasis::PriorAlone};
    int groups{};                          // that could show spread: two batches or more, not all or none succeeded
    int batches{};                         // in those groups
    std::optional<double> ownEstimate;     // from the records alone, without the prior; absent with the prior alone
    double weightOfRecords{};              // share of the prior's variance that the records took away, 0 to 1
    std::vector<WeightedCorrelation> law;  // twelve equally likely values, whose mean is `correlation`
};

/// The intraclass correlation common to all groups, each group (a plant in a method) having a mean of its own.
///
/// Maximum likelihood is too low where groups have few trays, since each group's mean takes up part of the spread. Here
/// each group's profile likelihood is divided by the square root of the information about its mean (Cox and Reid's
/// adjustment), and a weak prior is multiplied in, so that few batches give a figure near the usual one and many give
/// their own.
///
/// Simulated, 150 groups of trays of 20, means spread over 0.2 to 0.95, mean (root mean square error) where 0.1 is
/// true, without the prior:
///
///     trays a group      2               3               4
///     likelihood   0.026 (0.075)   0.050 (0.051)   0.066 (0.034)
///     adjusted     0.084 (0.022)   0.089 (0.017)   0.095 (0.008)    used here
///     ANOVA        0.097 (0.018)   0.095 (0.013)   0.099 (0.006)
///
/// With one to five groups the adjusted one has the smaller error of the two by about a tenth (5 groups of 3: 0.055
/// against 0.060), and it is a likelihood, which a prior can be put to; so it is used though at two trays a group it
/// still comes out a sixth low. At 0, five groups or more give 0.001 to 0.008; at 0.2 they give 0.17 to 0.19.
///
/// With the prior: mean (root mean square error) of the figure, and how often its 95 % limits hold the truth, groups of
/// three trays of 20:
///
///     true           0                   0.05                0.1                 0.2
///     1 group        0.107 (0.110) 0.99  0.125 (0.086) 0.98  0.154 (0.078) 0.99  0.193 (0.081) 0.99
///     3 groups       0.052 (0.056) 0.99  0.087 (0.053) 0.98  0.121 (0.056) 0.98  0.193 (0.075) 0.95
///     10 groups      0.021 (0.023) 0.99  0.060 (0.027) 0.97  0.104 (0.036) 0.96  0.189 (0.051) 0.97
///     50 groups      0.007 (0.007) 0.99  0.049 (0.011) 0.96  0.096 (0.017) 0.95  0.184 (0.029) 0.90
///
/// Domain    0 <= successes <= trials in each tray, 0 < level < 1, prior.a >= 1 and prior.b >= 1 and both finite; else
///           std::domain_error. Empty trays are left out.
/// Returns   always a figure. A group with one tray, or with all or none succeeded, or with trays of one trial only,
///           says nothing; where no group says anything the answer is the prior and `basis` says so.
/// Assumes   one correlation for all groups; trays independent given their group.
/// Accuracy  correlation within 2e-4, limits within 0.01 of their distance, by a grid of 32 points on the root of the
///           correlation, laid where the posterior is.
/// Source    Cox and Reid (1987), J. R. Stat. Soc. B 49, 1-39; ANOVA estimator: Ridout, Demetrio and Firth (1999),
///           Biometrics 55, 137-148.
[[nodiscard]] PooledSpread pooledSpread(std::span<const std::vector<Tray>> groups, double level = 0.95,
                                        const SpreadPrior& prior = {});

/// One correlation taken for granted, as a law for the functions that want one. 0 <= correlation < 1, else
/// std::domain_error.
[[nodiscard]] std::vector<WeightedCorrelation> knownCorrelation(double correlation);

}  // namespace stats
