// SPDX-License-Identifier: MIT
#include "core/climate/quantity.h"

namespace core {

namespace {

constexpr std::array knownQuantities = std::to_array<QuantityFacts>({
    {"solution_ec", "solution EC", "mS/cm", 0, 20},
    {"solution_ph", "solution pH", "", 0, 14},
    {"solution_temperature", "solution temperature", "C", -5, 60},
    {"dissolved_oxygen", "dissolved oxygen", "mg/L", 0, 50},
    {"medium_temperature", "medium temperature", "C", -5, 60},
    {"air_temperature", "air temperature", "C", -30, 60},
    {"relative_humidity", "relative humidity", "%", 0, 100},
    {"light", "light", "umol/m2/s", 0, 3000},
    {"leaf_temperature", "leaf temperature", "C", -30, 60},
});
static_assert(knownQuantities.size() == allQuantities.size());

}  // namespace

const QuantityFacts& factsOf(Quantity quantity) {
    return knownQuantities[static_cast<std::size_t>(quantity)];
}

std::optional<Quantity> quantityFrom(std::string_view word) {
    for (const Quantity quantity : allQuantities)
        if (factsOf(quantity).word == word) return quantity;
    return {};
}

}  // namespace core
