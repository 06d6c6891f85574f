// SPDX-License-Identifier: MIT
#include "core/plants/plant.h"

namespace core {

std::string fullName(const Plant& plant) {
    if (plant.cultivar.empty()) return plant.botanicalName;
    return plant.botanicalName + " '" + plant.cultivar + "'";
}

}  // namespace core
