// SPDX-License-Identifier: MIT
// The mother plant that cuttings are taken from. Its label is unique within its plant.
#pragma once

#include <string>

#include "core/id.h"

namespace core {

struct StockPlant {
    StockPlantId id{};
    PlantId plant{};
    std::string label;
    std::string note;
    bool isRetired{};

    bool operator==(const StockPlant&) const = default;
};

}  // namespace core
