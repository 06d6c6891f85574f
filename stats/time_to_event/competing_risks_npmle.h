// SPDX-License-Identifier: MIT
// How many have rooted by which day, when days are known only between checks and loss competes with rooting: the
// nonparametric maximum-likelihood estimate. Losses are not censoring; this estimate needs neither that fiction nor a
// curve of given shape. Read it with curve_quantiles.h.
#pragma once

#include <span>
#include <stop_token>
#include <vector>

#include "stats/time_to_event/observation.h"

namespace stats {

/// Mass somewhere in (left, right], or on the very day when left = right. Where inside, the data do not say.
struct SupportInterval {
    double left{};
    double right{};
    double mass{};
};

struct CumulativeIncidence {
    std::vector<SupportInterval> cause1;  // of positive mass, in order of day
    std::vector<SupportInterval> cause2;
    double neither{1.0};  // mass beyond the last day; 1 without observations
    double logLikelihood{};
    double gap{};          // the estimate is within this of the largest log likelihood; see Accuracy
    bool converged{true};  // gap at most 1e-8 of the sum of weights
    int iterations{};
};

/// The estimate of Hudgens, Satten and Longini: masses of each cause on its innermost intervals.
///
/// An interval is innermost when it starts at the `after` of an event of the cause (or of a cause-0 row) and ends at
/// the `by` of one, with neither in between. Turnbull's estimate when there is one cause, Aalen and Johansen's when
/// days are exact (an event on day t is counted before a withdrawal on day t).
///
/// If an event's interval ends after every cause-0 day, `neither` becomes 0 and whoever is left goes into that last
/// interval: show the curve only as far as someone is still watched.
///
/// Domain    as requireObservations(); no observations and weight 0 are allowed.
/// Returns   no observation of positive weight: empty curves, neither = 1. A stop request ends it early with
///           converged = false.
/// Assumes   check days do not depend on what would have been found.
/// Accuracy  stops when max_j sum_i w_i A_ij / (A p)_i - sum w, which bounds the distance to the largest log
///           likelihood, is below 1e-8 of the sum of weights (in practice 1e-12). Masses may be one solution of
///           several where rows cannot tell intervals apart.
/// Source    Hudgens, Satten and Longini (2001), Biometrics 57, 74-80; Turnbull (1976), J. R. Stat. Soc. B 38,
///           290-295; the Newton steps under the constraint of nonnegative masses after Wang (2007), J. R. Stat. Soc.
///           B 69, 185-198.
[[nodiscard]] CumulativeIncidence competingRisksNpmle(std::span<const Observation> observations,
                                                      std::stop_token stop = {});

}  // namespace stats
