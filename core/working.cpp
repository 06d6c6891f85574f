// SPDX-License-Identifier: MIT
#include "core/working.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>

namespace core {

std::string briefText(double figure, int digits) {
    constexpr int mostDecimals = 12;
    if (figure == 0 || !std::isfinite(figure)) return figure == 0 ? "0" : figure > 0 ? "infinite" : "not a number";
    const int before = static_cast<int>(std::floor(std::log10(std::abs(figure)))) + 1;
    const int decimals = std::clamp(digits - before, 0, mostDecimals);
    std::array<char, 400> room{};  // the largest double has 309 digits before its point
    const auto [end, fault] =
        std::to_chars(room.data(), room.data() + room.size(), figure, std::chars_format::fixed, decimals);
    std::string text(room.data(), end);
    if (text.find('.') == std::string::npos) return text;
    text.erase(text.find_last_not_of('0') + 1);
    if (text.back() == '.') text.pop_back();
    return text == "-0" ? "0" : text;
}

std::string briefPercent(double share) {
    constexpr double hundred = 100;
    return briefText(share * hundred, 2) + " %";
}

}  // namespace core
