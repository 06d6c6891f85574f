// SPDX-License-Identifier: MIT
// The steps over a mean rate by which integrals over it are summed, with what a prior says of each. For
// beta_binomial_posterior.h and surveillance/change_point.h.
#pragma once

#include <vector>

#include "stats/overdispersion/beta_binomial_posterior.h"

namespace stats {

struct RateStep {
    double rate{};       // above 0 and below 1
    double logWeight{};  // of the prior, times how wide the step is; sums to no figure in particular
};

/// Middles of equal steps of asin(sqrt(rate)) where the prior leaves no corner at the ends (Jeffreys's, and others of
/// half numbers); else of steps that crowd there by Sidi's sine transformation, and are up to twice as wide in between.
/// Rates rise. Domain: both numbers of the prior are 0.5 or more; steps >= 1.
[[nodiscard]] std::vector<RateStep> rateSteps(const RatePrior& prior, int steps);

}  // namespace stats
