// SPDX-License-Identifier: MIT
// Batches as a grower might have them, from a seed: own check days, rooting and losses between them, some withdrawn,
// some still open.
#pragma once

#include <vector>

#include "stats/numeric/seeded_random.h"
#include "stats/time_to_event/observation.h"

struct BatchRecipe {
    int cuttings{20};
    int checks{8};
    double daysToRoot{14};  // median of those that would root
    double lossPerDay{0.01};
    double rootingShare{0.8};
    double withdrawnPerCheck{0.02};
    bool daysAreWhole{true};
};

/// One batch, its rows gathered as a logbook would: one for each of (between which checks, what), weighted by how many.
[[nodiscard]] std::vector<stats::Observation> simulatedBatch(const BatchRecipe& recipe, stats::SeededRandom& random);
[[nodiscard]] std::vector<std::vector<stats::Observation>> simulatedBatches(int count, const BatchRecipe& recipe,
                                                                            stats::SeededRandom& random);
[[nodiscard]] std::vector<stats::Observation> joined(const std::vector<std::vector<stats::Observation>>& batches);
