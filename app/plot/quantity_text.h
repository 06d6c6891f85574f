// SPDX-License-Identifier: MIT
// Measured figures for people, in the grower's units: "0.6 mS/cm", "pH 6.1", "21.5 °C".
#pragma once

#include <QString>

#include "core/climate/quantity.h"
#include "core/units/display_units.h"

namespace plot {

/// "solution EC", "light": as it stands in the middle of a sentence or as the name of a column.
[[nodiscard]] QString quantityName(core::Quantity quantity);
/// "EC", "pH", "air": as short as a line with several figures wants it.
[[nodiscard]] QString quantityShortName(core::Quantity quantity);
/// After a figure: "mS/cm", "°C"; empty for pH.
[[nodiscard]] QString quantityUnit(core::Quantity quantity, const core::DisplayUnits& units);
/// As many decimals as a meter shows in that unit.
[[nodiscard]] int decimalsOf(core::Quantity quantity, const core::DisplayUnits& units);
/// The stored figure in the grower's unit, with it: "0.60 mS/cm".
[[nodiscard]] QString quantityText(core::Quantity quantity, double stored, const core::DisplayUnits& units);
/// "0 to 0.5 mS/cm"
[[nodiscard]] QString quantityRangeText(core::Quantity quantity, double low, double high,
                                        const core::DisplayUnits& units);

}  // namespace plot
