// SPDX-License-Identifier: MIT
#include "core/money/rate_of_mix.h"

#include <algorithm>
#include <cmath>

namespace core {
namespace {

struct PlantInMix {
    double share{};
    double trials{};
    double successes{};
    double squares{};  // of the batches' trials
};

std::vector<PlantInMix> countedPlants(std::span<const MixedPlant> plants) {
    std::vector<PlantInMix> counted;
    double shares = 0;
    for (const MixedPlant& plant : plants) {
        PlantInMix sum{.share = plant.share};
        for (const stats::Tray& batch : plant.batches) {
            sum.trials += batch.trials;
            sum.successes += batch.successes;
            sum.squares += static_cast<double>(batch.trials) * batch.trials;
        }
        if (sum.trials <= 0) continue;
        shares += plant.share;
        counted.push_back(sum);
    }
    for (PlantInMix& plant : counted) plant.share /= shares;
    return counted;
}

double rateOf(std::span<const PlantInMix> plants) {
    double rate = 0;
    for (const PlantInMix& plant : plants) rate += plant.share * plant.successes / plant.trials;
    return std::clamp(rate, 0.0, 1.0);
}

double effectiveTrials(std::span<const PlantInMix> plants, double rate, double correlation) {
    double variance = 0, ofLikeRates = 0;
    for (const PlantInMix& plant : plants) {
        const double designEffect = 1 + (plant.squares / plant.trials - 1) * correlation;
        const double weight = plant.share * plant.share * designEffect / plant.trials;
        const double drawn = (plant.successes + rate) / (plant.trials + 1);
        variance += weight * drawn * (1 - drawn);
        ofLikeRates += weight;
    }
    return variance > 0 ? rate * (1 - rate) / variance : 1 / ofLikeRates;
}

// A law as narrow as that of so many trials needs steps that are narrower still.
int anglesFor(double trials) {
    constexpr double fewest = 192, most = 2000;
    return static_cast<int>(std::clamp(8 * std::sqrt(trials), fewest, most));
}

}  // namespace

double rateOfMixAsCounted(std::span<const MixedPlant> plants) {
    return rateOf(countedPlants(plants));
}

std::vector<stats::RatePoint> rateOfMix(std::span<const MixedPlant> plants,
                                        const std::vector<stats::WeightedCorrelation>& spread) {
    const std::vector<PlantInMix> counted = countedPlants(plants);
    double trials = 0, weights = 0;
    for (const PlantInMix& plant : counted) trials += plant.trials;
    if (counted.size() == 1) {
        const auto only = std::ranges::find_if(plants, [](const MixedPlant& plant) {
            return std::ranges::any_of(plant.batches, [](const stats::Tray& tray) { return tray.trials > 0; });
        });
        return stats::ratePosterior({.batches = only->batches, .spread = spread}, anglesFor(trials));
    }
    const double rate = rateOf(counted);
    for (const stats::WeightedCorrelation& each : spread) weights += each.weight;
    std::vector<stats::RatePoint> law;
    for (const stats::WeightedCorrelation& each : spread) {
        const double effective = std::min(1e6, effectiveTrials(counted, rate, each.correlation));
        const stats::RatePrior beta{.successes = rate * effective + 0.5, .failures = (1 - rate) * effective + 0.5};
        for (stats::RatePoint point : stats::ratePosterior(
                 {.batches = {}, .spread = {{each.correlation, 1}}, .prior = beta}, anglesFor(trials))) {
            point.weight *= each.weight / weights;
            law.push_back(point);
        }
    }
    return law;
}

}  // namespace core
