// SPDX-License-Identifier: MIT
#include "stats/overdispersion/beta_binomial_posterior.h"

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <limits>
#include <numbers>

#include "stats/numeric/require.h"
#include "stats/overdispersion/beta_binomial_likelihood.h"
#include "stats/overdispersion/beta_binomial_probabilities.h"

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

// Where on 0 to pi / 2 the rate's angle lies, measured from both ends, and how densely such places lie there.
struct Place {
    double fromLow, fromHigh;
    double step;
};

// Equal steps. They are exact, nearly, for a prior that leaves no corner at the ends.
Place evenPlace(double share) {
    constexpr double right = std::numbers::pi / 2;
    return {.fromLow = share * right, .fromHigh = (1 - share) * right, .step = 1};
}

// Steps that crowd at the ends, where powers of other priors are not smooth: Sidi's sine transformation.
Place crowdedPlace(double share) {
    constexpr double right = std::numbers::pi / 2, round = 2 * std::numbers::pi;
    const auto crowded = [](double from) { return from - std::sin(round * from) / round; };
    return {
        .fromLow = crowded(share) * right, .fromHigh = crowded(1 - share) * right, .step = 1 - std::cos(round * share)};
}

bool leavesNoCorner(const RatePrior& prior) {
    return std::fmod(prior.successes, 1) == 0.5 && std::fmod(prior.failures, 1) == 0.5;
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
    constexpr double negligible = 1e-15, belowOne = 1 - std::numeric_limits<double>::epsilon() / 2;
    const std::vector<Tray> counted = traysWithTrials(past.batches);
    const BetaBinomialLikelihood likelihood(counted);
    double spreadWeight = 0;
    for (const WeightedCorrelation& each : past.spread) spreadWeight += each.weight;
    const auto placeOf = leavesNoCorner(past.prior) ? evenPlace : crowdedPlace;
    std::vector<RatePoint> points;
    double heaviest = 0;
    for (const WeightedCorrelation& each : past.spread) {
        std::vector<RatePoint> here;
        double largest = -std::numeric_limits<double>::infinity();
        for (int i = 0; i < angles; ++i) {
            const Place place = placeOf((i + 0.5) / angles);
            const double sine = std::sin(place.fromLow), cosine = std::sin(place.fromHigh);
            const double rate = std::min(sine * sine, belowOne);
            double logWeight = (2 * past.prior.successes - 1) * std::log(sine) +
                               (2 * past.prior.failures - 1) * std::log(cosine) + std::log(place.step);
            if (!counted.empty()) logWeight += likelihood.logLikelihood(rate, each.correlation);
            here.push_back({.rate = rate, .correlation = each.correlation, .weight = logWeight});
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
