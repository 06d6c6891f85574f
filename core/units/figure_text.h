// SPDX-License-Identifier: MIT
// A figure as it stands in files and in the words of a recipe: the shortest text that gives the same number back, with
// a point. Rounding for people is app's.
#pragma once

#include <array>
#include <charconv>
#include <string>

namespace core {

[[nodiscard]] inline std::string figureText(double figure) {
    std::array<char, 32> text{};
    const auto [end, fault] = std::to_chars(text.data(), text.data() + text.size(), figure);
    return std::string(text.data(), end);
}

}  // namespace core
