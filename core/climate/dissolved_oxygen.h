// SPDX-License-Identifier: MIT
// How much oxygen water can hold, by temperature and height above the sea, and what share of it a reading is.
#pragma once

#include "core/result.h"

namespace core {

inline constexpr const char* oxygenSource =
    "Benson and Krause (1984) Limnol. Oceanogr. 29:620-632, eq. 32; pressure after Benson and Krause (1980) 25:662-671";
inline constexpr const char* atmosphereSource = "ISO 2533 standard atmosphere, from memory";

/// atm at this height, where no barometer is at hand (a barometer's reading for weather is reduced to the sea, and is not this).
/// Domain -500 to 5000 m. (1 - 2.25577e-5 h)^5.25588; weather moves it by some 3 %. Source: atmosphereSource.
[[nodiscard]] Result<double> pressureAtAltitude(double metres);

/// mg/L in fresh water in equilibrium with moist air.
///
/// Domain    0 to 40 C, 0.5 to 1.1 atm.
/// Accuracy  0.002 mg/L of the equation as tabled; agrees with the table of EN 25814 from 0 to 30 C but at 6 and 7 C, where the copy at hand
///           prints 0.05 more. Older tables (10.2 at 15 C, 9.2 at 20 C) are of the Winkler age.
/// Source    oxygenSource.
[[nodiscard]] Result<double> oxygenSaturation(double celsius, double atmospheres = 1);

/// A reading as % of saturation. mg/L 0 to 50. Above 105 % with an air stone the meter is likelier wrong than the water (common practice, no
/// source).
[[nodiscard]] Result<double> oxygenPercent(double milligramsPerLitre, double celsius, double atmospheres = 1);

/// "aim at 80 % of saturation or more", common practice, no source.
inline constexpr double goodOxygenPercent = 80;
inline constexpr double doubtfulOxygenPercent = 105;

}  // namespace core
