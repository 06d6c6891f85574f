// SPDX-License-Identifier: MIT
// What batches lived through in their first days as columns of numbers, for a regression.
#pragma once

#include <span>
#include <string>
#include <unordered_map>
#include <vector>

#include "core/climate/station_climate.h"
#include "core/comparison/batch_features.h"

namespace core {

/// The climate at each station where something was read, for as long as anything was, and when days begin there. Empty: not looked at.
struct ConditionsOnRecord {
    std::unordered_map<StationId, StationClimate> climates{};
    DayStart dayStart{};
};

/// Conditions are looked at over so many days from sticking on, or up to the horizon where that is earlier.
inline constexpr int conditionDays = 14;

struct ConditionFeature {
    std::string name;                   // of the condition alone: "solution temperature"
    Feature feature{};                  // about the mean of those on record; others stand at 0
    std::vector<double> notOnRecord{};  // 1 for a batch without it
    int onRecord{};
};

/// Mean temperature, EC and pH of the solution, mean vapour pressure deficit, temperature of the medium and of the air, and the share of time
/// outside the bands before roots of its plant, all quantities together, each of the first days; in this order, those on record of two
/// batches or more that differ.
///
/// A batch that nothing was read of stands at the mean and has a mark of its own in `notOnRecord`: with that column beside the other it says
/// nothing of the condition, instead of standing for an average one. A mean counts as on record where readings cover a tenth of the days or
/// three readings were taken; the time outside where a day of it is known.
[[nodiscard]] std::vector<ConditionFeature> conditionFeaturesOf(const ConditionsOnRecord& conditions,
                                                                const Shelves& shelves,
                                                                std::span<const BatchRecord* const> batches,
                                                                int horizonDay);

}  // namespace core
