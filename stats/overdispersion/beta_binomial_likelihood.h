// SPDX-License-Identifier: MIT
// The beta-binomial likelihood of one arm and its derivatives. Only for beta_binomial.cpp, which maximises it.
#pragma once

#include <span>
#include <vector>

#include "stats/overdispersion/tray.h"

namespace stats {

/// Gradient and Hessian in the mean m and the correlation r.
struct LikelihoodDerivatives {
    double m{}, r{};
    double mm{}, mr{}, rr{};
};

/// P(y of n) = C(n, y) prod_{j<y} (m (1 - r) + j r) prod_{j<n-y} ((1 - m)(1 - r) + j r) / prod_{j<n} (1 - r + j r).
/// The factors 1 - r of j = 0 are cancelled on paper, so that r = 0 and r = 1 are ordinary points. Trays enter only by
/// how many of them have more than j successes, failures, trials; a call costs as much as the largest tray has trials.
class BetaBinomialLikelihood {
  public:
    /// Trays with trials only.
    explicit BetaBinomialLikelihood(std::span<const Tray> trays);

    [[nodiscard]] double trays() const { return trayCount_; }
    [[nodiscard]] double trials() const { return trials_; }
    [[nodiscard]] double successes() const { return successes_; }
    /// Nothing but successes or nothing but failures (or nothing at all): the mean is on the boundary, and the
    /// correlation can't be seen.
    [[nodiscard]] bool isDegenerate() const { return successes_ == 0 || successes_ == trials_; }
    [[nodiscard]] bool hasTrayOfTwo() const { return trialsAbove_.size() > 1; }
    /// No tray with both kinds.
    [[nodiscard]] bool isAllOrNothing() const { return mixedTrays_ == 0; }
    [[nodiscard]] double allSuccessTrays() const { return allSuccessTrays_; }

    /// 0 < mean < 1, 0 <= correlation <= 1. Binomial coefficients included.
    [[nodiscard]] double logLikelihood(double mean, double correlation) const;
    [[nodiscard]] LikelihoodDerivatives derivatives(double mean, double correlation) const;
    /// The mean at which the likelihood is largest, given 0 <= correlation < 1; the likelihood is concave in the mean.
    [[nodiscard]] double bestMean(double correlation) const;

  private:
    std::vector<double> successesAbove_, failuresAbove_, trialsAbove_;  // [j]: trays with more than j
    double trayCount_{}, trials_{}, successes_{}, mixedTrays_{}, allSuccessTrays_{};
    double logCoefficients_{};
};

}  // namespace stats
