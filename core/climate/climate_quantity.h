// SPDX-License-Identifier: MIT
// What is known of the climate at a station: whatever is measured, and what is worked out from that. Only what is measured is stored; for
// what is worked out see station_climate.h.
#pragma once

#include <array>
#include <optional>

#include "core/climate/own_band.h"
#include "core/climate/quantity.h"

namespace core {

/// First all of BandQuantity, in the same order.
enum class ClimateQuantity {
    SolutionEc,
    SolutionPh,
    SolutionTemperature,
    DissolvedOxygen,
    MediumTemperature,
    AirTemperature,
    RelativeHumidity,
    Light,
    LeafTemperature,
    VapourDeficit,    // kPa, over the air
    DailyLight,       // mol/m2 of a local day
    LeafDeficit,      // kPa, between the leaf and the air
    DewPoint,         // C
    OxygenSaturation  // %
};

inline constexpr std::size_t climateQuantities = bandQuantities + 3;
/// As they are shown: what is worked out stands behind what it comes from.
[[nodiscard]] const std::array<ClimateQuantity, climateQuantities>& allClimateQuantities();

[[nodiscard]] ClimateQuantity climateQuantityOf(Quantity quantity);
[[nodiscard]] ClimateQuantity climateQuantityOf(BandQuantity quantity);
/// Nothing for what is worked out.
[[nodiscard]] std::optional<Quantity> measuredQuantityOf(ClimateQuantity quantity);
/// Nothing for what no band can be kept of.
[[nodiscard]] std::optional<BandQuantity> bandQuantityOf(ClimateQuantity quantity);
/// "leaf_vapour_deficit" in kPa, "dew_point" in C, "oxygen_saturation" in %; else as factsOf(BandQuantity).
[[nodiscard]] const QuantityFacts& factsOf(ClimateQuantity quantity);
[[nodiscard]] bool isTemperature(ClimateQuantity quantity);

}  // namespace core
