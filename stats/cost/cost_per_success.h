// SPDX-License-Identifier: MIT
// Which of two ways costs less for each trial that succeeds, when their rates are only known from past batches.
#pragma once

#include <vector>

#include "stats/overdispersion/beta_binomial_posterior.h"

namespace stats {

/// One way to try: what a trial costs whether it succeeds or not, and what is known of its rate.
struct CostOfTrials {
    double perTrial{};             // money, 0 or more
    std::vector<RatePoint> rates;  // ratePosterior(); correlations don't matter, only the mean rate
};

/// P(first.perTrial / rate of the first < second.perTrial / rate of the second).
///
/// Domain    0 <= perTrial, finite; at least one point, rates above 0 and below 1, weights above 0 that sum to 1 within
///           1e-6; else std::domain_error.
/// Returns   1/2 where neither costs anything; 1 where only the second does.
/// Assumes   the rates independent; what a trial costs known.
/// Accuracy  1e-4 with 400 angles, error falling with their square: between two points of the second rate its law is a straight line
///           over asin(sqrt(rate)).
/// Source    from the definition.
[[nodiscard]] double chanceCheaper(const CostOfTrials& first, const CostOfTrials& second);

}  // namespace stats
