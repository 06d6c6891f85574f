// SPDX-License-Identifier: MIT
// How the figures of the climate were worked out, with the numbers put in; for the one figure that is looked at, not for a million of them.
// Domain of each: that of the function that gives the figure.
#pragma once

#include "core/working.h"

namespace core {

[[nodiscard]] Working airDeficitWorking(double airCelsius, double humidity);
[[nodiscard]] Working leafDeficitWorking(double airCelsius, double humidity, double leafCelsius);
[[nodiscard]] Working dewPointWorking(double airCelsius, double humidity);
[[nodiscard]] Working humidityWorking(double airCelsius, double kilopascals);
[[nodiscard]] Working dailyLightWorking(double micromoles, double hours);
[[nodiscard]] Working lightForDailyWorking(double moles, double hours);
[[nodiscard]] Working pressureWorking(double metres);
[[nodiscard]] Working oxygenWorking(double celsius, double atmospheres);
[[nodiscard]] Working oxygenPercentWorking(double milligramsPerLitre, double celsius, double atmospheres);
[[nodiscard]] Working ecAt25Working(double ec, double celsius, double slope);
[[nodiscard]] Working degreeDaysWorking(double lowestCelsius, double highestCelsius, double baseCelsius);

}  // namespace core
