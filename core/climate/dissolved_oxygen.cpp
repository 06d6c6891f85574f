// SPDX-License-Identifier: MIT
#include "core/climate/dissolved_oxygen.h"

#include <cmath>

#include "core/mixing/mixing_faults.h"

namespace core {

namespace {

constexpr double kelvin = 273.15;

double oxygenAtOneAtmosphere(double celsius) {
    const double t = celsius + kelvin;
    return std::exp(-139.34411 + 1.575701e5 / t - 6.642308e7 / (t * t) + 1.243800e10 / (t * t * t) -
                    8.621949e11 / (t * t * t * t));
}

Refusals faultsInWaterAndAir(double celsius, double atmospheres) {
    constexpr double warmest = 40, thinnest = 0.5, densest = 1.1;
    Refusals faults;
    collect(faults, faultBetween("Water temperature", celsius, 0, warmest, "C"));
    collect(faults, faultBetween("Air pressure", atmospheres, thinnest, densest, "atm"));
    return faults;
}

}  // namespace

Result<double> pressureAtAltitude(double metres) {
    constexpr double lowest = -500, highest = 5000;
    if (const auto fault = faultBetween("Altitude", metres, lowest, highest, "m")) return refused({*fault});
    return std::pow(1 - 2.25577e-5 * metres, 5.25588);
}

Result<double> oxygenSaturation(double celsius, double atmospheres) {
    if (Refusals faults = faultsInWaterAndAir(celsius, atmospheres); !faults.empty()) return refused(std::move(faults));
    const double t = celsius + kelvin;
    const double vapour = std::exp(11.8571 - 3840.7 / t - 216961 / (t * t));
    const double virial = 0.000975 - 1.426e-5 * celsius + 6.436e-8 * celsius * celsius;
    return oxygenAtOneAtmosphere(celsius) * atmospheres * (1 - vapour / atmospheres) * (1 - virial * atmospheres) /
           ((1 - vapour) * (1 - virial));
}

Result<double> oxygenPercent(double milligramsPerLitre, double celsius, double atmospheres) {
    constexpr double most = 50, hundred = 100;
    Refusals faults;
    collect(faults, faultBetween("Dissolved oxygen", milligramsPerLitre, 0, most, "mg/L"));
    const Result<double> saturation = oxygenSaturation(celsius, atmospheres);
    if (!saturation) faults.insert(faults.end(), saturation.error().begin(), saturation.error().end());
    if (!faults.empty()) return refused(std::move(faults));
    return hundred * milligramsPerLitre / *saturation;
}

}  // namespace core
