// SPDX-License-Identifier: MIT
#include "app/logger/cell_number.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>

#include "app/logger/time_text.h"

namespace logger {

std::optional<double> cellNumber(std::string_view cell, core::DecimalSign sign) {
    constexpr std::string_view minusSign = "\u2212";
    constexpr std::size_t longest = 40;
    std::string_view text = withoutBlanks(cell);
    const bool isNegative = text.starts_with('-') || text.starts_with(minusSign);
    if (isNegative) text.remove_prefix(text.front() == '-' ? 1 : minusSign.size());
    if (!isNegative && text.starts_with('+')) text.remove_prefix(1);
    if (text.empty() || text.front() == '-' || text.size() > longest) return {};
    std::array<char, longest> plain{};
    std::ranges::copy(text, plain.begin());
    char* const end = plain.data() + text.size();
    if (sign == core::DecimalSign::Comma) {
        if (std::find(plain.data(), end, '.') != end) return {};
        std::replace(plain.data(), end, ',', '.');
    }
    double number = 0;
    const auto [read, fault] = std::from_chars(plain.data(), end, number);
    if (fault != std::errc{} || read != end || !std::isfinite(number)) return {};
    return isNegative ? -number : number;
}

bool isWithoutNumber(std::string_view cell) {
    return std::ranges::none_of(cell, [](char c) { return c >= '0' && c <= '9'; });
}

}  // namespace logger
