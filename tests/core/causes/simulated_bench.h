// SPDX-License-Identifier: MIT
// Logbooks by chance of a season on a believable bench, with or without something wrong planted in them. All invented.
#pragma once

#include <cstdint>
#include <optional>
#include <unordered_set>

#include "core/causes/suspects.h"
#include "core/records.h"

namespace examples {

enum class Planted { Nothing, ColdTub, BadLot, PestMonth };

struct SimulatedBench {
    core::Records records;
    core::ConditionsOnRecord conditions;
    std::unordered_set<core::BatchId> affected;  // by what was planted
    int affectedCuttings{};
};

/// Four plants by two methods in three tubs and three trays, 40 to 60 batches of 12 to 24 cuttings in about 100 days, two workers, three lots of
/// one hormone; rates of 55 to 85 in 100 with a spread between batches of 0.05 to 0.1; readings by hand every other day. What is planted takes
/// 30 points of 100 from the rate of its batches, which have 60 cuttings or more in all: the season is drawn anew until they do.
[[nodiscard]] SimulatedBench simulatedBench(Planted planted, std::uint64_t seed);

/// What suspectsFor() says of the batch, among `affected` or of all where none are, that did worst: the farthest below what the others of its
/// plant and method say, in standard deviations.
[[nodiscard]] core::Suspects suspectsOfWorst(const SimulatedBench& bench);

}  // namespace examples
