// SPDX-License-Identifier: MIT
// What the calculators of the trade refuse in the same words: nothing, less than nothing, more than makes sense.
#pragma once

#include <optional>
#include <string>

#include "core/field_faults.h"
#include "core/working.h"

namespace core {

inline constexpr double mostLitres = 100'000;  // of a tub or a tank
inline constexpr double mostEc = 20;           // mS/cm; what meters show
inline constexpr double mostCelsius = 60;

[[nodiscard]] inline std::string withUnitBehind(const std::string& text, const std::string& unit) {
    return unit.empty() ? text : text + ' ' + unit;
}

/// As near to what was typed as matters.
[[nodiscard]] inline std::string enteredText(double value) {
    constexpr int digits = 10;
    return briefText(value, digits);
}

/// More than 0 and up to `most`; not a number and infinities fall out of every range.
[[nodiscard]] inline std::optional<Refusal> faultAboveNothing(const std::string& field, double value, double most,
                                                              const std::string& unit) {
    if (value > 0 && value <= most) return {};
    return outOfRange(field, enteredText(value), "more than 0 and up to " + withUnitBehind(briefText(most), unit));
}

/// From `low` to `high`, both allowed.
[[nodiscard]] inline std::optional<Refusal> faultBetween(const std::string& field, double value, double low,
                                                         double high, const std::string& unit) {
    if (value >= low && value <= high) return {};
    return outOfRange(field, enteredText(value), briefText(low) + " to " + withUnitBehind(briefText(high), unit));
}

}  // namespace core
