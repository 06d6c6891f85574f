// SPDX-License-Identifier: MIT
#include "stats/time_to_event/interval_censored_fit.h"

#include "stats/numeric/distribution_tails.h"
#include "stats/numeric/normal_quantile.h"
#include "stats/numeric/require.h"
#include "stats/time_to_event/speed_model.h"

namespace stats {
namespace {

IntervalCensoredFit fitWhereEveryoneRoots(const SpeedRows& rows, SpeedShape shape, double level) {
    if (const auto why = whyNoSpeedFit(rows, true)) return {.estimate = {}, .whyNot = why};
    const SpeedModel model{.arms = std::span(&rows, 1), .shape = shape, .everyoneRoots = {1}};
    const auto fit = fitSpeedModel(model);
    if (!fit) return {.estimate = {}, .whyNot = NoSpeedFit::LikelihoodIsFlat};
    IntervalCensoredEstimate estimate;
    estimate.shape = shape;
    estimate.parameters = {.mu = fit->x[1], .logSigma = fit->x[2]};
    estimate.medianDay = speedQuantile(shape, estimate.parameters, 0.5);
    estimate.asCounted = speedUncertainty(model, *fit, 0, fit->covariance, normalQuantileOfLevel(level));
    if (const auto batchwise = batchCovariance(model, *fit)) {
        const double reach = studentQuantileOfLevel(level, batchwise->degreesOfFreedom);
        estimate.byBatch = speedUncertainty(model, *fit, 0, batchwise->covariance, reach);
    }
    estimate.logLikelihood = fit->logLikelihood;
    estimate.akaike = 4 - 2 * fit->logLikelihood;
    estimate.iterations = fit->iterations;
    return {.estimate = estimate, .whyNot = {}};
}

}  // namespace

IntervalCensoredFit fitIntervalCensored(std::span<const std::vector<Observation>> batches, SpeedShape shape,
                                        double level) {
    requireLevel("fitIntervalCensored", level);
    return fitWhereEveryoneRoots(gatherSpeedRows("fitIntervalCensored", batches), shape, level);
}

IntervalCensoredFit fitIntervalCensored(std::span<const Observation> rows, SpeedShape shape, double level) {
    const std::vector<Observation> one(rows.begin(), rows.end());
    return fitIntervalCensored(std::span(&one, 1), shape, level);
}

double fittedShare(const IntervalCensoredEstimate& estimate, double day) {
    return speedShare(estimate.shape, estimate.parameters, day);
}

}  // namespace stats
