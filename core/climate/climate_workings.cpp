// SPDX-License-Identifier: MIT
#include "core/climate/climate_workings.h"

#include "core/climate/dissolved_oxygen.h"
#include "core/climate/ec_at_25.h"
#include "core/climate/over_time.h"
#include "core/climate/vapour.h"

namespace core {

namespace {

constexpr double wholePercent = 100;

std::string saturationText(double celsius) {
    return "0.6108 exp(17.27 x " + briefText(celsius) + " / (" + briefText(celsius) + " + 237.3))";
}

}  // namespace

Working airDeficitWorking(double airCelsius, double humidity) {
    return {.formula = "deficit = 0.6108 exp(17.27 t / (t + 237.3)) x (1 - humidity)",
            .withNumbers = saturationText(airCelsius) + " x (1 - " + briefText(humidity / wholePercent) +
                           ") = " + briefText(*airVapourDeficit(airCelsius, humidity)) + " kPa",
            .source = vapourSource};
}

Working leafDeficitWorking(double airCelsius, double humidity, double leafCelsius) {
    return {.formula = "deficit at the leaf = saturation at the leaf - saturation of the air x humidity",
            .withNumbers = briefText(*saturationVapourPressure(leafCelsius)) + " - " +
                           briefText(*saturationVapourPressure(airCelsius)) + " x " +
                           briefText(humidity / wholePercent) + " = " +
                           briefText(*leafVapourDeficit(airCelsius, humidity, leafCelsius)) + " kPa",
            .source = vapourSource};
}

Working dewPointWorking(double airCelsius, double humidity) {
    return {.formula = "x = ln(vapour pressure / 0.6108); dew point = 237.3 x / (17.27 - x)",
            .withNumbers = "vapour pressure " +
                           briefText(*saturationVapourPressure(airCelsius) * humidity / wholePercent) +
                           " kPa: " + briefText(*dewPoint(airCelsius, humidity)) + " C",
            .source = vapourSource};
}

Working humidityWorking(double airCelsius, double kilopascals) {
    return {.formula = "humidity = 1 - deficit / saturation",
            .withNumbers = "1 - " + briefText(kilopascals) + " / " + briefText(*saturationVapourPressure(airCelsius)) +
                           " = " + briefText(*humidityForDeficit(airCelsius, kilopascals)) + " %",
            .source = vapourSource};
}

Working dailyLightWorking(double micromoles, double hours) {
    return {.formula = "daily light integral = light x hours x 3600 / 1000000",
            .withNumbers = briefText(micromoles) + " x " + briefText(hours) +
                           " x 3600 / 1000000 = " + briefText(*dailyLightOf(micromoles, hours)) + " mol/m2",
            .source = "by definition"};
}

Working lightForDailyWorking(double moles, double hours) {
    return {.formula = "light = daily light integral x 1000000 / (hours x 3600)",
            .withNumbers = briefText(moles) + " x 1000000 / (" + briefText(hours) +
                           " x 3600) = " + briefText(*lightForDaily(moles, hours)) + " umol/m2/s",
            .source = "by definition"};
}

Working pressureWorking(double metres) {
    return {.formula = "pressure = (1 - 0.0000225577 x altitude)^5.25588",
            .withNumbers = "(1 - 0.0000225577 x " + briefText(metres) +
                           ")^5.25588 = " + briefText(*pressureAtAltitude(metres), 5) + " atm",
            .source = atmosphereSource};
}

Working oxygenWorking(double celsius, double atmospheres) {
    return {.formula = "saturation by temperature and pressure (four terms in 1/T, corrected for vapour)",
            .withNumbers = briefText(celsius) + " C, " + briefText(atmospheres, 5) +
                           " atm: " + briefText(*oxygenSaturation(celsius, atmospheres)) + " mg/L",
            .source = oxygenSource};
}

Working oxygenPercentWorking(double milligramsPerLitre, double celsius, double atmospheres) {
    return {.formula = "share of saturation = 100 x reading / saturation",
            .withNumbers = "100 x " + briefText(milligramsPerLitre) + " / " +
                           briefText(*oxygenSaturation(celsius, atmospheres)) + " = " +
                           briefText(*oxygenPercent(milligramsPerLitre, celsius, atmospheres)) + " %",
            .source = oxygenSource};
}

Working ecAt25Working(double ec, double celsius, double slope) {
    return {.formula = "EC at 25 C = EC read / (1 + slope x (t - 25))",
            .withNumbers = briefText(ec) + " / (1 + " + briefText(slope) + " x (" + briefText(celsius) +
                           " - 25)) = " + briefText(*ecAt25(ec, celsius, slope)),
            .source = ecSlopeSource};
}

Working degreeDaysWorking(double lowestCelsius, double highestCelsius, double baseCelsius) {
    return {.formula = "degree-days = (lowest + highest) / 2 - base, never below 0",
            .withNumbers = "(" + briefText(lowestCelsius) + " + " + briefText(highestCelsius) + ") / 2 - " +
                           briefText(baseCelsius) + " = " +
                           briefText(*degreeDaysOf(lowestCelsius, highestCelsius, baseCelsius)) + " C days",
            .source = commonPractice};
}

}  // namespace core
