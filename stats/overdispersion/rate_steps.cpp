// SPDX-License-Identifier: MIT
#include "stats/overdispersion/rate_steps.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>

namespace stats {
namespace {

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

}  // namespace

std::vector<RateStep> rateSteps(const RatePrior& prior, int steps) {
    constexpr double belowOne = 1 - std::numeric_limits<double>::epsilon() / 2;
    const auto placeOf = leavesNoCorner(prior) ? evenPlace : crowdedPlace;
    std::vector<RateStep> all;
    for (int i = 0; i < steps; ++i) {
        const Place place = placeOf((i + 0.5) / steps);
        const double sine = std::sin(place.fromLow), cosine = std::sin(place.fromHigh);
        all.push_back({.rate = std::min(sine * sine, belowOne),
                       .logWeight = (2 * prior.successes - 1) * std::log(sine) +
                                    (2 * prior.failures - 1) * std::log(cosine) + std::log(place.step)});
    }
    return all;
}

}  // namespace stats
