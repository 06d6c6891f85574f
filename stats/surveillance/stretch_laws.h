// SPDX-License-Identifier: MIT
// What the batches before each place in time, and those after it, say of their rate at one correlation. For
// change_point.h only.
#pragma once

#include <cstddef>
#include <span>
#include <vector>

#include "stats/overdispersion/rate_steps.h"
#include "stats/overdispersion/tray.h"

namespace stats {

/// The shares that the steps have in the rate's law; those too small to matter are left out at both ends.
struct StretchLaw {
    double logEvidence{};  // log of the probability of the counts, binomial coefficients left out
    std::size_t first{};   // step of the first share
    std::vector<double> shares;
};

struct StretchLaws {
    StretchLaw whole;
    std::vector<StretchLaw> before;  // the first one, the first two, ... of the batches; one fewer than there are
    std::vector<StretchLaw> after;   // the others
};

/// Likelihoods are summed up once, batch by batch. Domain: two batches or more, with trials; steps of rateSteps() whose
/// weights sum to 1; 0 <= correlation < 1.
[[nodiscard]] StretchLaws stretchLaws(std::span<const Tray> batches, const std::vector<RateStep>& steps,
                                      double correlation);

}  // namespace stats
