// SPDX-License-Identifier: MIT
#include "core/units/days.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <cstdio>

namespace core {

namespace {

bool isAllDigits(std::string_view text) {
    return std::ranges::all_of(text, [](char c) { return c >= '0' && c <= '9'; });
}

int wholeNumber(std::string_view digits) {
    int number = 0;
    std::from_chars(digits.data(), digits.data() + digits.size(), number);
    return number;
}

}  // namespace

std::optional<Date> dateFromIso(std::string_view text) {
    if (text.size() != 10 || text[4] != '-' || text[7] != '-') return {};
    const std::string_view year = text.substr(0, 4), month = text.substr(5, 2), day = text.substr(8, 2);
    if (!isAllDigits(year) || !isAllDigits(month) || !isAllDigits(day)) return {};
    const Date date{std::chrono::year{wholeNumber(year)}, std::chrono::month{static_cast<unsigned>(wholeNumber(month))},
                    std::chrono::day{static_cast<unsigned>(wholeNumber(day))}};
    if (!date.ok() || date.year() < std::chrono::year{1800}) return {};
    return date;
}

std::string isoText(Date date) {
    std::array<char, 32> text{};
    std::snprintf(text.data(), text.size(), "%04d-%02u-%02u", static_cast<int>(date.year()),
                  static_cast<unsigned>(date.month()), static_cast<unsigned>(date.day()));
    return text.data();
}

int daysBetween(Date first, Date second) {
    return static_cast<int>((std::chrono::sys_days{second} - std::chrono::sys_days{first}).count());
}

Date addDays(Date date, int days) {
    return Date{std::chrono::sys_days{date} + std::chrono::days{days}};
}

}  // namespace core
