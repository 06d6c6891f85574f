// SPDX-License-Identifier: MIT
// The beta-binomial by maximum likelihood: how strongly cuttings of one tray share its fate (the intraclass
// correlation), in one arm or pooled over many. It describes; its likelihood-ratio test rejects too often with few
// trays (0.07 to 0.13 at 0.05), so no verdict rests on it. For that see tray_t_test.h.
#pragma once

#include <optional>
#include <span>
#include <vector>

#include "stats/overdispersion/tray.h"

namespace stats {

struct BetaBinomialFit {
    std::optional<double> mean;  // absent without trials
    std::optional<double> correlation;
    std::optional<double> standardErrorOfMean;
    std::optional<double> standardErrorOfCorrelation;  // absent where the correlation is 0 or 1
    double logLikelihood{};
    double binomialLogLikelihood{};
    double likelihoodRatio{};  // against correlation 0
    double p{1.0};             // half the chi-square tail, since 0 is on the boundary
    double pOnOneDegree{1.0};  // the whole tail, for comparison with programs that give it
    bool isOnBoundary{true};   // correlation 0, 1 or not estimable
    bool converged{true};
    int iterations{};
};

/// Mean and intraclass correlation 1 / (a + b + 1) of one arm's trays, with standard errors from the observed
/// information.
///
/// Domain    0 <= successes <= trials, else std::domain_error. Empty trays are left out; no trays at all is allowed.
/// Returns   correlation 0 when the likelihood is largest there (one tray, or less spread than chance); 1 when every
///           tray is all or nothing and both kinds occur; absent when all or none succeeded or no tray has two
///           trials. A correlation below 0 is not considered.
/// Assumes   rates of trays are drawn from one beta distribution.
/// Accuracy  mean and correlation to 1e-8, log likelihood to 1e-10. Sums of log(mean (1 - rho) + j rho) instead of
///           differences of log gammas, which cancel near correlation 0.
/// Source    Skellam (1948), J. R. Stat. Soc. B 10, 257-261; Crowder (1978), Appl. Stat. 27, 34-37; boundary: Self
///           and Liang (1987), J. Am. Stat. Assoc. 82, 605-610.
[[nodiscard]] BetaBinomialFit fitBetaBinomial(std::span<const Tray> trays);

struct CommonCorrelationFit {
    std::vector<std::optional<double>> means;  // one an arm; absent for an arm without trials
    std::optional<double> correlation;         // absent where no arm can show it
    double logLikelihood{};
    bool converged{true};
    int iterations{};
};

/// Own mean in each arm, one intraclass correlation for all: the correlation pooled over many plants and methods, a few
/// trays of each. An arm in which all or none succeeded has mean 1 or 0 and says nothing about the correlation.
///
/// Fitting each arm's mean uses up part of the spread, so the correlation comes out too low where arms have few trays:
/// simulated with four trays of 20 an arm, 0.069 where the truth is 0.1. It is for comparing likelihoods; the figure to
/// use is pooledSpread()'s (intraclass_correlation.h). Otherwise as fitBetaBinomial().
[[nodiscard]] CommonCorrelationFit fitCommonCorrelation(std::span<const std::vector<Tray>> arms);

struct BetaBinomialComparison {
    CommonCorrelationFit ownMeans;
    std::optional<double> commonMean;
    std::optional<double> commonCorrelation;
    double commonLogLikelihood{};
    double likelihoodRatio{};
    int degreesOfFreedom{};  // arms with trials, less one
    double p{1.0};
};

/// Likelihood-ratio comparison of own means against one mean for all (each with a correlation of its own).
[[nodiscard]] BetaBinomialComparison compareBetaBinomial(std::span<const std::vector<Tray>> arms);

/// log P(successes of trials), binomial coefficient included. 0 <= mean <= 1, 0 <= correlation <= 1, else
/// std::domain_error. -infinity for what cannot happen.
[[nodiscard]] double betaBinomialLogProbability(int successes, int trials, double mean, double correlation);

}  // namespace stats
