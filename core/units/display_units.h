// SPDX-License-Identifier: MIT
// The units that the grower reads and types; everything is stored in one unit each (C, mS/cm, L, mm).
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "core/climate/quantity.h"

namespace core {

enum class TemperatureUnit { Celsius, Fahrenheit };
/// The ppm scales are what meters print: 1 mS/cm is 500, 640 or 700 ppm of a salt that nobody named.
enum class EcUnit { MilliSiemens, MicroSiemens, Ppm500, Ppm640, Ppm700 };
enum class VolumeUnit { Litres, UsGallons };
enum class LengthUnit { Millimetres, Inches };

struct DisplayUnits {
    TemperatureUnit temperature{TemperatureUnit::Celsius};
    EcUnit ec{EcUnit::MilliSiemens};
    VolumeUnit volume{VolumeUnit::Litres};
    LengthUnit length{LengthUnit::Millimetres};

    bool operator==(const DisplayUnits&) const = default;
};

/// The words that stand in files: "C", "F"; "mS/cm", "uS/cm", "ppm500", "ppm640", "ppm700"; "L", "gal"; "mm", "in".
[[nodiscard]] std::string_view wordFor(TemperatureUnit unit);
[[nodiscard]] std::string_view wordFor(EcUnit unit);
[[nodiscard]] std::string_view wordFor(VolumeUnit unit);
[[nodiscard]] std::string_view wordFor(LengthUnit unit);
[[nodiscard]] std::optional<TemperatureUnit> temperatureUnitFrom(std::string_view word);
[[nodiscard]] std::optional<EcUnit> ecUnitFrom(std::string_view word);
[[nodiscard]] std::optional<VolumeUnit> volumeUnitFrom(std::string_view word);
[[nodiscard]] std::optional<LengthUnit> lengthUnitFrom(std::string_view word);

/// A stored figure in the grower's unit, and back. Accuracy: 1e-12 relative there and back.
/// Source: 1 in = 25.4 mm and 1 US gal = 3.785411784 L exactly (NIST Handbook 44, appendix C, from memory); F = 1.8 C + 32.
[[nodiscard]] double shownValue(double stored, Quantity quantity, const DisplayUnits& units);
[[nodiscard]] double storedValue(double shown, Quantity quantity, const DisplayUnits& units);
[[nodiscard]] double shownVolume(double litres, VolumeUnit unit);
[[nodiscard]] double storedVolume(double shown, VolumeUnit unit);
[[nodiscard]] double shownLength(double millimetres, LengthUnit unit);
[[nodiscard]] double storedLength(double shown, LengthUnit unit);

/// The unit as a person writes it after the figure: "mS/cm", "\u00b0C", "%"; empty for pH.
[[nodiscard]] std::string unitText(Quantity quantity, const DisplayUnits& units);

}  // namespace core
