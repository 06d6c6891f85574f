// SPDX-License-Identifier: MIT
// The refusals that rules of many things share: a figure out of range, a name that is taken, a thing that this logbook doesn't have.
#pragma once

#include <algorithm>
#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "core/result.h"
#include "core/units/entered_text.h"
#include "core/units/figure_text.h"
#include "core/units/range_text.h"

namespace core {

inline constexpr int longestDays = 3650;  // of anything that is counted in days

inline void collect(Refusals& faults, std::optional<Refusal> fault) {
    if (fault) faults.push_back(std::move(*fault));
}

/// "Horizon day is 0; 1 to 3650 is allowed."
[[nodiscard]] inline Refusal outOfRange(const std::string& field, const std::string& value,
                                        const std::string& allowed) {
    return {field, value, allowed, field + " is " + value + "; " + allowed + " is allowed."};
}

[[nodiscard]] inline std::optional<Refusal> faultInWhole(const std::string& field, int value, int low, int high) {
    if (value >= low && value <= high) return {};
    return outOfRange(field, std::to_string(value), rangeText(low, high));
}

/// Not a number and infinities fall out of every range.
[[nodiscard]] inline std::optional<Refusal> faultInFigure(const std::string& field, double value, double low,
                                                          double high, const std::string& allowed) {
    if (value >= low && value <= high) return {};
    return outOfRange(field, figureText(value), allowed);
}

/// A share that is neither none nor all.
[[nodiscard]] inline std::optional<Refusal> faultInShare(const std::string& field, double value) {
    if (value > 0 && value < 1) return {};
    return outOfRange(field, figureText(value), "more than 0 and less than 1");
}

[[nodiscard]] inline Refusal takenRefusal(const std::string& field, const std::string& value) {
    return {field, quotable(value), "a name that is not taken",
            field + " is " + quotable(value) + ", which is taken; a name that is not taken is allowed."};
}

[[nodiscard]] inline Refusal missingRefusal(const std::string& field, std::int64_t id) {
    const std::string value = id == 0 ? "not given" : "the id " + std::to_string(id);
    return {field, value, "one that this logbook has",
            field + (id == 0 ? " is not given" : " has " + value + ", which this logbook does not have") +
                "; one that this logbook has is allowed."};
}

/// The rule of all things that have a unique name.
template <class Thing>
[[nodiscard]] Refusals faultsInName(const Thing& thing, const std::vector<Thing>& shelf) {
    Refusals faults;
    collect(faults, faultInName("Name", thing.name));
    const auto hasItsName = [&thing](const Thing& other) { return other.id != thing.id && other.name == thing.name; };
    if (faults.empty() && std::ranges::any_of(shelf, hasItsName)) faults.push_back(takenRefusal("Name", thing.name));
    return faults;
}

}  // namespace core
