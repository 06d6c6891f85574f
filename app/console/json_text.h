// SPDX-License-Identifier: MIT
// What all --json answers have in common: an undefined figure is null, an infinite one the string "Infinity", names come in a fixed order.
#pragma once

#include <nlohmann/json.hpp>
#include <optional>
#include <ostream>
#include <string>

namespace console {

using Json = nlohmann::ordered_json;

[[nodiscard]] Json figure(double value);
[[nodiscard]] Json figure(const std::optional<double>& value);

/// {"low": ..., "high": ...} of anything that has the two.
template <class Limits>
[[nodiscard]] Json limits(const Limits& of) {
    return {{"low", figure(of.low)}, {"high", figure(of.high)}};
}
template <class Limits>
[[nodiscard]] Json limits(const std::optional<Limits>& of) {
    return of ? limits(*of) : Json();
}

/// Over several lines, with a line end. Bytes that are no UTF-8 become U+FFFD.
void print(const Json& json, std::ostream& out);

}  // namespace console
