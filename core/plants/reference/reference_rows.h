// SPDX-License-Identifier: MIT
// The parts of the reference table and the words that its rows are written in. Only for plant_reference.cpp.
#pragma once

#include <optional>
#include <span>
#include <string_view>

#include "core/plants/plant_reference.h"

namespace core::reference {

using End = std::optional<double>;
inline constexpr End none{};

/// Read in the sources named.
constexpr ReferenceRange read(End low, End high, std::string_view sources) {
    return {low, high, HowKnown::Read, sources};
}
constexpr ReferenceRange partlyRead(End low, End high, std::string_view sources) {
    return {low, high, HowKnown::PartlyRead, sources};
}
constexpr ReferenceRange recalled(End low, End high, std::string_view sources) {
    return {low, high, HowKnown::FromMemory, sources};
}
/// Common practice, no source.
constexpr ReferenceRange practice(End low, End high) {
    return {low, high, HowKnown::CommonPractice, {}};
}
inline constexpr ReferenceRange unknown{};

[[nodiscard]] std::span<const PlantReference> herbs();
[[nodiscard]] std::span<const PlantReference> herbaceousOrnamentals();
[[nodiscard]] std::span<const PlantReference> houseplants();
[[nodiscard]] std::span<const PlantReference> softFruit();
[[nodiscard]] std::span<const PlantReference> vegetables();
[[nodiscard]] std::span<const PlantReference> woodyOrnamentals();

}  // namespace core::reference
