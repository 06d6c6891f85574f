// SPDX-License-Identifier: MIT
#include "core/units/number_entry.h"

#include <algorithm>
#include <charconv>
#include <string>
#include <system_error>

namespace core {

namespace {

constexpr std::string_view minusSign = "\u2212";
constexpr int largestCount = 1'000'000'000;

std::string_view withoutBlanks(std::string_view typed) {
    const std::size_t first = typed.find_first_not_of(" \t");
    if (first == std::string_view::npos) return {};
    return typed.substr(first, typed.find_last_not_of(" \t") - first + 1);
}

bool isDigit(char c) {
    return c >= '0' && c <= '9';
}

}  // namespace

std::optional<double> numberFrom(std::string_view typed) {
    std::string_view text = withoutBlanks(typed);
    std::string plain;
    if (text.starts_with('-') || text.starts_with(minusSign)) {
        plain = "-";
        text.remove_prefix(text.front() == '-' ? 1 : minusSign.size());
    }
    bool hasDecimalSign = false;
    for (const char c : text) {
        const bool isDecimalSign = c == '.' || c == ',';
        if (!isDigit(c) && (!isDecimalSign || hasDecimalSign)) return {};
        hasDecimalSign = hasDecimalSign || isDecimalSign;
        plain += isDecimalSign ? '.' : c;
    }
    // "5." is a number that somebody has not finished typing; ".5" is one that people write.
    if (text.empty() || !isDigit(text.back())) return {};
    double number = 0;
    const auto [end, fault] = std::from_chars(plain.data(), plain.data() + plain.size(), number);
    if (fault != std::errc{} || end != plain.data() + plain.size()) return {};
    return number;
}

std::optional<int> countFrom(std::string_view typed) {
    const std::string_view text = withoutBlanks(typed);
    if (text.empty() || !std::ranges::all_of(text, isDigit)) return {};
    int count = 0;
    const auto [end, fault] = std::from_chars(text.data(), text.data() + text.size(), count);
    if (fault != std::errc{} || count > largestCount) return {};
    return count;
}

}  // namespace core
