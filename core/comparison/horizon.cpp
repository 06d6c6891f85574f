// SPDX-License-Identifier: MIT
#include <algorithm>
#include <unordered_map>
#include <unordered_set>

#include "core/comparison/arm_records.h"
#include "core/comparison/comparison.h"

namespace core {
namespace {

std::optional<int> longestUsualRooting(const ComparisonQuestion& question, const Shelves& shelves,
                                       std::span<const BatchRecord> batches) {
    std::unordered_set<PlantId> present;
    for (const BatchRecord* record : batchesOf(question, batches)) present.insert(record->batch.plant);
    if (question.plant.isSet()) present.insert(question.plant);
    std::optional<int> longest;
    for (const Plant& plant : shelves.plants) {
        if (!plant.usualRootingDaysHigh || *plant.usualRootingDaysHigh < 1 || !present.contains(plant.id)) continue;
        longest = std::max(longest.value_or(0), *plant.usualRootingDaysHigh);
    }
    return longest;
}

}  // namespace

Horizon horizonFor(const ComparisonQuestion& question, const Shelves& shelves, std::span<const BatchRecord> batches) {
    if (question.horizonDay) return {.day = *question.horizonDay, .reason = "set for this comparison"};
    if (question.trial) {
        const Trial* trial = find(shelves.trials, *question.trial);
        if (trial != nullptr && trial->horizonDay && *trial->horizonDay >= 1)
            return {.day = *trial->horizonDay, .reason = "the trial's"};
    }
    if (const auto longest = longestUsualRooting(question, shelves, batches))
        return {.day = *longest, .reason = "the longest usual rooting time of these plants"};
    return {.day = shelves.facts.horizonDay, .reason = "the logbook's"};
}

}  // namespace core
