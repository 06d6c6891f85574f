// SPDX-License-Identifier: MIT
#include "stats/time_to_event/cure_mixture.h"

#include <cmath>

#include "stats/numeric/distribution_tails.h"
#include "stats/numeric/normal_quantile.h"
#include "stats/numeric/require.h"
#include "stats/time_to_event/speed_model.h"

namespace stats {
namespace {

RootingShareUncertainty shareUncertainty(double logit, double variance, double reach) {
    const double error = std::sqrt(variance), share = 1 / (1 + std::exp(-logit)), rest = 1 / (1 + std::exp(logit));
    return {.standardErrorOfLogit = error,
            .standardError = error * share * rest,
            .limits = limitsOfLogit(logit, reach * error)};
}

CureMixtureFit fitWhereSomeNeverRoot(const SpeedRows& rows, SpeedShape shape, double level) {
    if (const auto why = whyNoSpeedFit(rows, false)) return {.estimate = {}, .whyNot = why};
    SpeedModel model{.arms = std::span(&rows, 1), .shape = shape};
    const auto fit = fitSpeedModelAndBoundary(model);
    if (!fit) return {.estimate = {}, .whyNot = NoSpeedFit::LikelihoodIsFlat};
    model.everyoneRoots = fit->everyoneRoots;
    CureMixtureEstimate estimate;
    estimate.shape = shape;
    estimate.parameters = {.mu = fit->x[1], .logSigma = fit->x[2]};
    estimate.isOnBoundary = model.everyoneRoots[0] != 0;
    estimate.rootingShare = estimate.isOnBoundary ? 1 : 1 / (1 + std::exp(-fit->x[0]));
    estimate.medianDay = speedQuantile(shape, estimate.parameters, 0.5);
    const double reach = normalQuantileOfLevel(level);
    estimate.speed = speedUncertainty(model, *fit, 0, fit->covariance, reach);
    if (!estimate.isOnBoundary) estimate.share = shareUncertainty(fit->x[0], fit->covariance.at(0, 0), reach);
    if (const auto batchwise = batchCovariance(model, *fit)) {
        const double wider = studentQuantileOfLevel(level, batchwise->degreesOfFreedom);
        estimate.speedByBatch = speedUncertainty(model, *fit, 0, batchwise->covariance, wider);
        estimate.shareByBatch.emplace();
        if (!estimate.isOnBoundary) {
            estimate.shareByBatch = shareUncertainty(fit->x[0], batchwise->covariance.at(0, 0), wider);
        }
    }
    estimate.logLikelihood = fit->logLikelihood;
    estimate.akaike = (estimate.isOnBoundary ? 4 : 6) - 2 * fit->logLikelihood;
    estimate.iterations = fit->iterations;
    return {.estimate = estimate, .whyNot = {}};
}

}  // namespace

CureMixtureFit fitCureMixture(std::span<const std::vector<Observation>> batches, SpeedShape shape, double level) {
    requireLevel("fitCureMixture", level);
    return fitWhereSomeNeverRoot(gatherSpeedRows("fitCureMixture", batches), shape, level);
}

CureMixtureFit fitCureMixture(std::span<const Observation> rows, SpeedShape shape, double level) {
    const std::vector<Observation> one(rows.begin(), rows.end());
    return fitCureMixture(std::span(&one, 1), shape, level);
}

double fittedShare(const CureMixtureEstimate& estimate, double day) {
    return estimate.rootingShare * speedShare(estimate.shape, estimate.parameters, day);
}

}  // namespace stats
