// SPDX-License-Identifier: MIT
#include "stats/overdispersion/beta_binomial_posterior.h"

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <limits>

#include "stats/numeric/require.h"
#include "stats/overdispersion/beta_binomial_likelihood.h"
#include "stats/overdispersion/beta_binomial_probabilities.h"
#include "stats/overdispersion/rate_steps.h"

namespace stats {
namespace {

std::vector<double> mixedLaw(const PastBatches& past, int trials, int angles) {
    std::vector<double> mixed(static_cast<std::size_t>(trials) + 1);
    for (const RatePoint& point : ratePosterior(past, angles)) {
        const std::vector<double> law = betaBinomialProbabilities(trials, point.rate, point.correlation);
        for (std::size_t x = 0; x < law.size(); ++x) mixed[x] += point.weight * law[x];
    }
    return mixed;
}

double largestMove(const std::vector<double>& from, const std::vector<double>& to) {
    double largest = 0;
    for (std::size_t x = 0; x < from.size(); ++x) largest = std::max(largest, std::abs(to[x] - from[x]));
    return largest;
}

}  // namespace

RatePrior ratePriorOfBand(double low, double high, double mostTrials) {
    if (!(low >= 0 && low <= high && high <= 1))
        throwDomainError("ratePriorOfBand", "low", low, "0 <= low <= high <= 1");
    if (!(mostTrials >= 1 && std::isfinite(mostTrials)))
        throwDomainError("ratePriorOfBand", "mostTrials", mostTrials, "1 or more");
    constexpr double deviationsInBand = 3.29;
    const double mean = (low + high) / 2, deviation = (high - low) / deviationsInBand;
    const double trials =
        deviation > 0 ? std::min(mostTrials, mean * (1 - mean) / (deviation * deviation) - 1) : mostTrials;
    return {.successes = std::max(0.5, mean * trials), .failures = std::max(0.5, (1 - mean) * trials)};
}

void requirePastBatches(std::string_view function, const PastBatches& past) {
    requireTrays(function, past.batches);
    if (past.spread.empty()) throwDomainError(function, "number of correlations", 0, "1 or more");
    for (const WeightedCorrelation& each : past.spread) {
        if (!(each.correlation >= 0 && each.correlation < 1))
            throwDomainError(function, "correlation", each.correlation, "from 0 to below 1");
        if (!(each.weight > 0 && std::isfinite(each.weight)))
            throwDomainError(function, "weight", each.weight, "above 0");
    }
    for (const double each : {past.prior.successes, past.prior.failures})
        if (!(each >= 0.5 && each <= 1e6)) throwDomainError(function, "prior", each, "from 0.5 to 1e6");
}

std::vector<RatePoint> ratePosterior(const PastBatches& past, int angles) {
    requirePastBatches("ratePosterior", past);
    if (angles < 1) throwDomainError("ratePosterior", "angles", angles, "1 or more");
    constexpr double negligible = 1e-15;
    const std::vector<Tray> counted = traysWithTrials(past.batches);
    const BetaBinomialLikelihood likelihood(counted);
    double spreadWeight = 0;
    for (const WeightedCorrelation& each : past.spread) spreadWeight += each.weight;
    const std::vector<RateStep> steps = rateSteps(past.prior, angles);
    std::vector<RatePoint> points;
    double heaviest = 0;
    for (const WeightedCorrelation& each : past.spread) {
        std::vector<RatePoint> here;
        double largest = -std::numeric_limits<double>::infinity();
        for (const RateStep& step : steps) {
            double logWeight = step.logWeight;
            if (!counted.empty()) logWeight += likelihood.logLikelihood(step.rate, each.correlation);
            here.push_back({.rate = step.rate, .correlation = each.correlation, .weight = logWeight});
            largest = std::max(largest, logWeight);
        }
        double sum = 0;
        for (RatePoint& point : here) sum += point.weight = std::exp(point.weight - largest);
        for (RatePoint& point : here) {
            point.weight *= each.weight / (spreadWeight * sum);
            heaviest = std::max(heaviest, point.weight);
        }
        points.insert(points.end(), here.begin(), here.end());
    }
    std::erase_if(points, [&](const RatePoint& point) { return point.weight < negligible * heaviest; });
    double sum = 0;
    for (const RatePoint& point : points) sum += point.weight;
    for (RatePoint& point : points) point.weight /= sum;
    return points;
}

std::vector<double> predictiveProbabilities(const PastBatches& past, int trials) {
    requirePastBatches("predictiveProbabilities", past);
    constexpr int mostTrials = 20'000;
    if (trials < 0 || trials > mostTrials) throwDomainError("predictiveProbabilities", "trials", trials, "0 to 20000");
    constexpr int mostAngles = 8192;
    // A step halved squares the error at least where the posterior is smooth, so what moved this little is far nearer.
    constexpr double still = 1e-8;
    int angles = 32;
    std::vector<double> law = mixedLaw(past, trials, angles);
    while (angles < mostAngles) {
        angles *= 2;
        std::vector<double> finer = mixedLaw(past, trials, angles);
        const double move = largestMove(law, finer);
        law = std::move(finer);
        if (move < still) break;
    }
    return law;
}

}  // namespace stats
