// SPDX-License-Identifier: MIT
#include "tests/stats/simulated_batches.h"

#include <cmath>
#include <map>
#include <tuple>

using stats::Observation;

std::vector<Observation> simulatedBatch(const BatchRecipe& recipe, stats::SeededRandom& random) {
    std::vector<double> days{0};
    for (int check = 0; check < recipe.checks; ++check) {
        const double step = recipe.daysAreWhole ? 2.0 + static_cast<double>(random.below(6)) : 1 + 6 * random.uniform();
        days.push_back(days.back() + step);
    }
    std::map<std::tuple<double, double, int>, double> counts;
    for (int cutting = 0; cutting < recipe.cuttings; ++cutting) {
        const double never = 1e9;
        const double rooted =
            random.uniform() < recipe.rootingShare ? std::exp(random.normal(std::log(recipe.daysToRoot), 0.4)) : never;
        const double lost = recipe.lossPerDay > 0 ? random.gamma(1, 1 / recipe.lossPerDay) : never;
        double after = 0, by = INFINITY;
        int cause = 0;
        for (std::size_t check = 1; check < days.size(); ++check) {
            if (std::min(rooted, lost) <= days[check]) {
                by = days[check];
                cause = rooted < lost ? 1 : 2;
                break;
            }
            after = days[check];
            if (random.uniform() < recipe.withdrawnPerCheck) break;
        }
        ++counts[{after, by, cause}];
    }
    std::vector<Observation> batch;
    for (const auto& [key, count] : counts) {
        batch.push_back(
            {.after = std::get<0>(key), .by = std::get<1>(key), .cause = std::get<2>(key), .weight = count});
    }
    return batch;
}

std::vector<std::vector<Observation>> simulatedBatches(int count, const BatchRecipe& recipe,
                                                       stats::SeededRandom& random) {
    std::vector<std::vector<Observation>> batches;
    for (int i = 0; i < count; ++i) batches.push_back(simulatedBatch(recipe, random));
    return batches;
}

std::vector<Observation> joined(const std::vector<std::vector<Observation>>& batches) {
    std::vector<Observation> all;
    for (const auto& batch : batches) all.insert(all.end(), batch.begin(), batch.end());
    return all;
}
