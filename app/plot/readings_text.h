// SPDX-License-Identifier: MIT
// What happened at a station, for people: a day's readings in one line, care by its name.
#pragma once

#include <QString>
#include <vector>

#include "core/care/care.h"
#include "core/climate/reading.h"
#include "core/units/display_units.h"

namespace plot {

[[nodiscard]] QString careText(core::CareKind kind);
/// "L", "gal"
[[nodiscard]] QString volumeUnitText(core::VolumeUnit unit);
/// "2 L"
[[nodiscard]] QString volumeText(double litres, core::VolumeUnit unit);
/// "topped up, 2 L"; and "topped up, 2 L: rainwater"
[[nodiscard]] QString careWithVolume(const core::Care& care, const core::DisplayUnits& units);
[[nodiscard]] QString careInWords(const core::Care& care, const core::DisplayUnits& units);
/// The figure alone, in the grower's unit.
[[nodiscard]] QString readingNumber(double stored, core::Quantity quantity, const core::DisplayUnits& units);
/// "EC 0.60 mS/cm, pH 6.0, solution 21.5 °C"; several of one quantity as a range: "EC 0.60 to 0.80 mS/cm (3 readings)".
[[nodiscard]] QString readingsInWords(const std::vector<core::Reading>& readings, const core::DisplayUnits& units);

}  // namespace plot
