// SPDX-License-Identifier: MIT
#include "app/console/arguments.h"

#include <charconv>

#include "app/console/words.h"
#include "core/units/number_entry.h"

namespace console {

double levelFrom(const std::string& option, const std::string& text) {
    const std::optional<double> level = core::numberFrom(text);
    if (level && *level > 0 && *level < 1) return *level;
    throw WrongArgument(
        filled(tr("%1 is %2; a number between 0 and 1 is allowed, such as 0.95."), {option, shown(text)}));
}

double marginFrom(const std::string& option, const std::string& text) {
    const std::optional<double> points = core::numberFrom(text);
    if (points && *points >= 1 && *points <= 99) return *points / 100;
    throw WrongArgument(filled(tr("%1 is %2; a number of cuttings of 100 from 1 to 99 is allowed, such as 10."),
                               {option, shown(text)}));
}

double shareFrom(const std::string& option, const std::string& text) {
    const std::optional<double> share = core::numberFrom(text);
    if (share && *share >= 0 && *share <= 1) return *share;
    throw WrongArgument(filled(tr("%1 is %2; a number from 0 to 1 is allowed, such as 0.75."), {option, shown(text)}));
}

double percentFrom(const std::string& option, const std::string& text) {
    constexpr double all = 100;
    const std::optional<double> percent = core::numberFrom(text);
    if (percent && *percent > 0 && *percent <= all) return *percent / all;
    throw WrongArgument(
        filled(tr("%1 is %2; a number of 100, above 0 and up to 100, is allowed, such as 90."), {option, shown(text)}));
}

std::int64_t wholeFrom(const std::string& option, const std::string& text, std::int64_t low, std::int64_t high) {
    std::int64_t number = 0;
    const auto [end, fault] = std::from_chars(text.data(), text.data() + text.size(), number);
    if (fault == std::errc{} && end == text.data() + text.size() && number >= low && number <= high) return number;
    throw WrongArgument(filled(tr("%1 is %2; a whole number from %3 to %4 is allowed."),
                               {option, shown(text), std::to_string(low), std::to_string(high)}));
}

core::Date dateFrom(const std::string& option, const std::string& text) {
    if (const std::optional<core::Date> date = core::dateFromIso(text)) return *date;
    throw WrongArgument(
        filled(tr("%1 is %2; a day as year-month-day is allowed, such as 2026-03-14."), {option, shown(text)}));
}

}  // namespace console
