// SPDX-License-Identifier: MIT
// What can be measured at a station, each in the one unit that it is stored in.
#pragma once

#include <array>
#include <optional>
#include <string_view>

namespace core {

enum class Quantity {
    SolutionEc,           // mS/cm at 25 C
    SolutionPh,           // pH
    SolutionTemperature,  // C
    DissolvedOxygen,      // mg/L
    MediumTemperature,    // C
    AirTemperature,       // C
    RelativeHumidity,     // %
    Light,                // photosynthetic photon flux density, umol/(m2 s)
    LeafTemperature       // C
};

inline constexpr std::array allQuantities{
    Quantity::SolutionEc,        Quantity::SolutionPh,     Quantity::SolutionTemperature, Quantity::DissolvedOxygen,
    Quantity::MediumTemperature, Quantity::AirTemperature, Quantity::RelativeHumidity,    Quantity::Light,
    Quantity::LeafTemperature};

/// What a meter can show at all; beyond that a figure is a slip of the pen.
struct QuantityFacts {
    std::string_view word;  // in files: "solution_ec"
    std::string_view name;  // for people: "solution EC"
    std::string_view unit;  // in files and in storage: "mS/cm"
    double low{};
    double high{};
};

[[nodiscard]] const QuantityFacts& factsOf(Quantity quantity);
[[nodiscard]] std::optional<Quantity> quantityFrom(std::string_view word);

}  // namespace core
