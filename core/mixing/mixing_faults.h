// SPDX-License-Identifier: MIT
// What the calculators of the trade refuse in the same words: nothing, less than nothing, more than makes sense.
#pragma once

#include <optional>
#include <string>

#include "core/field_faults.h"
#include "core/units/display_units.h"
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

/// "1.5 mS/cm", in the grower's unit.
[[nodiscard]] inline std::string ecText(double ec, const DisplayUnits& units) {
    return briefText(shownValue(ec, Quantity::SolutionEc, units)) + ' ' + unitText(Quantity::SolutionEc, units);
}

/// 0 to 20 mS/cm, worded in the grower's unit.
[[nodiscard]] inline std::optional<Refusal> faultInEc(const std::string& field, double ec, const DisplayUnits& units) {
    return faultBetween(field, shownValue(ec, Quantity::SolutionEc, units), 0,
                        shownValue(mostEc, Quantity::SolutionEc, units), unitText(Quantity::SolutionEc, units));
}

/// The same where nothing is not allowed either.
[[nodiscard]] inline std::optional<Refusal> faultInFullEc(const std::string& field, double ec,
                                                          const DisplayUnits& units) {
    return faultAboveNothing(field, shownValue(ec, Quantity::SolutionEc, units),
                             shownValue(mostEc, Quantity::SolutionEc, units), unitText(Quantity::SolutionEc, units));
}

/// Above 0 up to `most` L, worded in the grower's unit.
[[nodiscard]] inline std::optional<Refusal> faultInVolume(const std::string& field, double litres,
                                                          const DisplayUnits& units, double most = mostLitres) {
    return faultAboveNothing(field, shownVolume(litres, units.volume), shownVolume(most, units.volume),
                             std::string(wordFor(units.volume)));
}

}  // namespace core
