// SPDX-License-Identifier: MIT
#include "core/climate/vapour.h"

#include <cmath>

#include "core/mixing/mixing_faults.h"

namespace core {

namespace {

constexpr double vapourAtZero = 0.6108, vapourSlope = 17.27, vapourOffset = 237.3;  // kPa, 1, C
constexpr double coldestAir = -30;
constexpr double saturatedHumidity = 100;  // %

double saturationAt(double celsius) {
    return vapourAtZero * std::exp(vapourSlope * celsius / (celsius + vapourOffset));
}

Refusals faultsInAir(double celsius, double humidity, double driest) {
    Refusals faults;
    collect(faults, faultBetween("Air temperature", celsius, coldestAir, mostCelsius, "C"));
    collect(faults, faultBetween("Relative humidity", humidity, driest, saturatedHumidity, "%"));
    return faults;
}

}  // namespace

Result<double> saturationVapourPressure(double celsius) {
    if (const auto fault = faultBetween("Temperature", celsius, coldestAir, mostCelsius, "C")) return refused({*fault});
    return saturationAt(celsius);
}

Result<double> airVapourDeficit(double airCelsius, double humidity) {
    if (Refusals faults = faultsInAir(airCelsius, humidity, 0); !faults.empty()) return refused(std::move(faults));
    return saturationAt(airCelsius) * (1 - humidity / saturatedHumidity);
}

Result<double> leafVapourDeficit(double airCelsius, double humidity, double leafCelsius) {
    Refusals faults = faultsInAir(airCelsius, humidity, 0);
    collect(faults, faultBetween("Leaf temperature", leafCelsius, coldestAir, mostCelsius, "C"));
    if (!faults.empty()) return refused(std::move(faults));
    return saturationAt(leafCelsius) - saturationAt(airCelsius) * humidity / saturatedHumidity;
}

Result<double> dewPoint(double airCelsius, double humidity) {
    constexpr double driest = 1;
    if (Refusals faults = faultsInAir(airCelsius, humidity, driest); !faults.empty()) return refused(std::move(faults));
    const double x = std::log(humidity / saturatedHumidity) + vapourSlope * airCelsius / (airCelsius + vapourOffset);
    return vapourOffset * x / (vapourSlope - x);
}

Result<double> humidityForDeficit(double airCelsius, double kilopascals) {
    Refusals faults = faultsInAir(airCelsius, saturatedHumidity, 0);
    if (faults.empty())
        collect(faults, faultBetween("Vapour pressure deficit", kilopascals, 0, saturationAt(airCelsius), "kPa"));
    if (!faults.empty()) return refused(std::move(faults));
    return saturatedHumidity * (1 - kilopascals / saturationAt(airCelsius));
}

}  // namespace core
