// SPDX-License-Identifier: MIT
#include "stats/time_to_event/speed_comparison.h"

#include <algorithm>
#include <cmath>

#include "stats/numeric/distribution_tails.h"
#include "stats/numeric/normal_quantile.h"
#include "stats/numeric/require.h"
#include "stats/time_to_event/speed_model.h"

namespace stats {
namespace {

constexpr std::size_t kMu1 = 1, kMu2 = 3;

ArmSpeed armSpeed(const SpeedModel& model, const SpeedModelFit& fit, std::size_t arm, double reach) {
    ArmSpeed result;
    result.isOnBoundary = model.everyoneRoots[arm] != 0;
    const double logit = fit.x[2 * arm];
    result.rootingShare = result.isOnBoundary ? 1 : 1 / (1 + std::exp(-logit));
    if (!result.isOnBoundary) {
        result.limits = limitsOfLogit(logit, reach * std::sqrt(fit.covariance.at(2 * arm, 2 * arm)));
    }
    result.medianDay = speedQuantile(model.shape, {.mu = fit.x[2 * arm + 1], .logSigma = fit.x.back()}, 0.5);
    result.medianLimits = speedUncertainty(model, fit, arm, fit.covariance, reach).medianLimits;
    return result;
}

double errorOfDifference(const SquareMatrix& covariance) {
    const double variance = covariance.at(kMu1, kMu1) + covariance.at(kMu2, kMu2) - 2 * covariance.at(kMu1, kMu2);
    return std::sqrt(std::max(0.0, variance));
}

std::optional<BatchwiseRatio> batchwiseRatio(const SpeedModel& model, const SpeedModelFit& fit, double level) {
    const auto batchwise = batchCovariance(model, fit);
    if (!batchwise || batchwise->degreesOfFreedom < 1) return {};
    const double logRatio = fit.x[kMu1] - fit.x[kMu2], error = errorOfDifference(batchwise->covariance);
    if (!(error > 1e-6 * errorOfDifference(fit.covariance))) return {};
    const double reach = studentQuantileOfLevel(level, batchwise->degreesOfFreedom) * error;
    return BatchwiseRatio{.standardErrorOfLog = error,
                          .limits = limitsOfExp(logRatio, reach),
                          .p = studentTwoSidedTail(logRatio / error, batchwise->degreesOfFreedom)};
}

}  // namespace

SpeedComparison compareSpeed(std::span<const std::vector<Observation>> first,
                             std::span<const std::vector<Observation>> second, SpeedShape shape, double level) {
    requireLevel("compareSpeed", level);
    const std::array<SpeedRows, 2> arms{gatherSpeedRows("compareSpeed", first),
                                        gatherSpeedRows("compareSpeed", second)};
    for (std::size_t arm = 0; arm < 2; ++arm) {
        if (const auto why = whyNoSpeedFit(arms[arm], false)) {
            return {.estimate = {}, .whyNot = why, .armWithout = static_cast<int>(arm) + 1};
        }
    }
    SpeedModel model{.arms = arms, .shape = shape, .everyoneRoots = {0, 0}};
    const auto own = fitSpeedModelAndBoundary(model);
    model.isSpeedEqual = true;
    const auto equal = fitSpeedModelAndBoundary(model);
    if (!own || !equal) return {.estimate = {}, .whyNot = NoSpeedFit::LikelihoodIsFlat};
    model.isSpeedEqual = false;
    model.everyoneRoots = own->everyoneRoots;
    const double reach = normalQuantileOfLevel(level), logRatio = own->x[kMu1] - own->x[kMu2];
    SpeedComparisonEstimate estimate;
    estimate.shape = shape;
    estimate.logSigma = own->x.back();
    estimate.ratio = limitsOfExp(logRatio, 0).low;
    for (std::size_t arm = 0; arm < 2; ++arm) estimate.arms[arm] = armSpeed(model, *own, arm, reach);
    estimate.standardErrorOfLogRatio = errorOfDifference(own->covariance);
    estimate.ratioLimits = limitsOfExp(logRatio, reach * estimate.standardErrorOfLogRatio);
    estimate.byBatch = batchwiseRatio(model, *own, level);
    estimate.logLikelihood = own->logLikelihood;
    estimate.equalSpeedLogLikelihood = equal->logLikelihood;
    // Rounding must not make it negative where the arms are alike.
    estimate.likelihoodRatio = std::max(0.0, 2 * (own->logLikelihood - equal->logLikelihood));
    estimate.p = chiSquareTail(estimate.likelihoodRatio, 1);
    estimate.iterations = own->iterations + equal->iterations;
    return {.estimate = estimate, .whyNot = {}};
}

}  // namespace stats
