// SPDX-License-Identifier: MIT
#include "core/climate/climate_quantity.h"

namespace core {

namespace {

constexpr QuantityFacts leafDeficitFacts{"leaf_vapour_deficit", "vapour pressure deficit at the leaf", "kPa", -20, 20};
constexpr QuantityFacts dewPointFacts{"dew_point", "dew point", "C", -80, 60};
constexpr QuantityFacts saturationFacts{"oxygen_saturation", "oxygen saturation", "%", 0, 1000};

constexpr std::array<ClimateQuantity, climateQuantities> inOrderOfShowing{
    ClimateQuantity::SolutionEc,      ClimateQuantity::SolutionPh,       ClimateQuantity::SolutionTemperature,
    ClimateQuantity::DissolvedOxygen, ClimateQuantity::OxygenSaturation, ClimateQuantity::MediumTemperature,
    ClimateQuantity::AirTemperature,  ClimateQuantity::RelativeHumidity, ClimateQuantity::VapourDeficit,
    ClimateQuantity::DewPoint,        ClimateQuantity::LeafTemperature,  ClimateQuantity::LeafDeficit,
    ClimateQuantity::Light,           ClimateQuantity::DailyLight};

static_assert(static_cast<int>(ClimateQuantity::DailyLight) == static_cast<int>(BandQuantity::DailyLight));
static_assert(static_cast<std::size_t>(ClimateQuantity::OxygenSaturation) + 1 == climateQuantities);

}  // namespace

const std::array<ClimateQuantity, climateQuantities>& allClimateQuantities() {
    return inOrderOfShowing;
}

ClimateQuantity climateQuantityOf(Quantity quantity) {
    return climateQuantityOf(bandQuantityOf(quantity));
}

ClimateQuantity climateQuantityOf(BandQuantity quantity) {
    return static_cast<ClimateQuantity>(quantity);
}

std::optional<BandQuantity> bandQuantityOf(ClimateQuantity quantity) {
    if (static_cast<std::size_t>(quantity) >= bandQuantities) return {};
    return static_cast<BandQuantity>(quantity);
}

std::optional<Quantity> measuredQuantityOf(ClimateQuantity quantity) {
    const auto band = bandQuantityOf(quantity);
    return band ? measuredQuantityOf(*band) : std::nullopt;
}

const QuantityFacts& factsOf(ClimateQuantity quantity) {
    if (const auto band = bandQuantityOf(quantity)) return factsOf(*band);
    if (quantity == ClimateQuantity::LeafDeficit) return leafDeficitFacts;
    return quantity == ClimateQuantity::DewPoint ? dewPointFacts : saturationFacts;
}

bool isTemperature(ClimateQuantity quantity) {
    return factsOf(quantity).unit == "C";
}

}  // namespace core
