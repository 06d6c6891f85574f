// SPDX-License-Identifier: MIT
#include "core/units/moment.h"

#include <charconv>

#include "core/units/days.h"

namespace core {

namespace {

std::string twoDigits(long number) {
    return (number < 10 ? "0" : "") + std::to_string(number);
}

/// The two digits at `at`, from 0 to `most`.
std::optional<int> twoDigitsAt(std::string_view text, std::size_t at, int most) {
    int number = 0;
    const char* const end = text.data() + at + 2;
    const auto [stopped, error] = std::from_chars(text.data() + at, end, number);
    if (error != std::errc() || stopped != end || number < 0 || number > most) return {};
    return number;
}

}  // namespace

std::string isoText(Moment moment) {
    const auto day = std::chrono::floor<std::chrono::days>(moment);
    const std::chrono::hh_mm_ss time(moment - day);
    return isoText(Date(day)) + 'T' + twoDigits(time.hours().count()) + ':' + twoDigits(time.minutes().count()) + ':' +
           twoDigits(time.seconds().count()) + 'Z';
}

std::optional<Moment> momentFromIso(std::string_view text) {
    constexpr std::size_t length = 20;
    if (text.size() != length || text[10] != 'T' || text[13] != ':' || text[16] != ':' || text[19] != 'Z') return {};
    const auto day = dateFromIso(text.substr(0, 10));
    const auto hours = twoDigitsAt(text, 11, 23), minutes = twoDigitsAt(text, 14, 59),
               seconds = twoDigitsAt(text, 17, 59);
    if (!day || !hours || !minutes || !seconds) return {};
    return std::chrono::sys_days(*day) + std::chrono::hours(*hours) + std::chrono::minutes(*minutes) +
           std::chrono::seconds(*seconds);
}

}  // namespace core
