// SPDX-License-Identifier: MIT
// Water in the air around cuttings: how much it could still take up (vapour pressure deficit), over the air and over the leaf, and when dew
// falls.
#pragma once

#include "core/result.h"

namespace core {

inline constexpr const char* vapourSource =
    "FAO Irrigation and Drainage Paper 56 (1998), equation 11, from memory; checked against its Table 2.3";

/// kPa of water vapour in saturated air.
///
/// Domain    -30 to 60 C.
/// Returns   0.6108 exp(17.27 t / (t + 237.3)).
/// Accuracy  the equation is within 0.1 % of steam tables from 0 to 50 C (from memory), and over water also below 0.
/// Source    vapourSource.
[[nodiscard]] Result<double> saturationVapourPressure(double celsius);

/// kPa that the air lacks: saturation (1 - humidity). Air -30 to 60 C, humidity 0 to 100 %.
[[nodiscard]] Result<double> airVapourDeficit(double airCelsius, double humidity);

/// kPa between the leaf, which is saturated inside, and the air; below 0 dew forms on the leaf. Both -30 to 60 C, humidity 0 to 100 %.
[[nodiscard]] Result<double> leafVapourDeficit(double airCelsius, double humidity, double leafCelsius);

/// C at which the air's water begins to fall out: the exact inverse of saturationVapourPressure(). Air -30 to 60 C, humidity 1 to 100 %.
[[nodiscard]] Result<double> dewPoint(double airCelsius, double humidity);

/// % of humidity that gives so much deficit over the air. Air -30 to 60 C, deficit from 0 to saturation.
[[nodiscard]] Result<double> humidityForDeficit(double airCelsius, double kilopascals);

}  // namespace core
