// SPDX-License-Identifier: MIT
#include "app/logger/time_text.h"

#include <charconv>
#include <chrono>

#include "core/climate/logger_day.h"

namespace logger {

namespace {

constexpr int secondsInAnHour = 3600, secondsInAMinute = 60;
constexpr int thisCentury = 2000, earliestYear = 1800;

bool isDigitOfTime(char c) {
    return c >= '0' && c <= '9';
}

/// Up to so many digits off the front; their number is 0 where there are none, or more.
std::pair<int, int> takeFigure(std::string_view& text, int mostDigits) {
    int digits = 0, figure = 0;
    while (digits < static_cast<int>(text.size()) && isDigitOfTime(text[static_cast<std::size_t>(digits)])) {
        if (digits == mostDigits) return {0, 0};
        figure = figure * 10 + (text[static_cast<std::size_t>(digits)] - '0');
        ++digits;
    }
    text.remove_prefix(static_cast<std::size_t>(digits));
    return {figure, digits};
}

void skipBlanks(std::string_view& text) {
    while (!text.empty() && (text.front() == ' ' || text.front() == '\t')) text.remove_prefix(1);
}

bool takeLetter(std::string_view& text, char upper) {
    if (text.empty() || (text.front() & ~0x20) != upper) return false;
    text.remove_prefix(1);
    return true;
}

/// "AM", "p.m."; 'A' or 'P', or nothing where neither stands there.
std::optional<char> takeHalfOfDay(std::string_view& text) {
    std::string_view rest = text;
    skipBlanks(rest);
    for (const char half : {'A', 'P'}) {
        std::string_view tried = rest;
        if (!takeLetter(tried, half)) continue;
        if (tried.starts_with('.')) tried.remove_prefix(1);
        if (!takeLetter(tried, 'M')) continue;
        if (tried.starts_with('.')) tried.remove_prefix(1);
        text = tried;
        return half;
    }
    return {};
}

/// What stands behind the time of day.
struct WrittenOffset {
    bool isUnderstood{};
    bool isThere{};
    int seconds{};

    [[nodiscard]] std::optional<int> ahead() const { return isThere ? std::optional<int>(seconds) : std::nullopt; }
};

/// "02:00", "0500", "02": hours and perhaps minutes, in seconds; nothing where they are neither.
std::optional<int> takeHoursAndMinutes(std::string_view& text) {
    auto [hours, digits] = takeFigure(text, 4);
    int minutes = 0;
    if (digits == 4) {
        minutes = hours % 100;
        hours /= 100;
    } else if (digits == 2 && text.starts_with(':')) {
        text.remove_prefix(1);
        const auto [figure, minuteDigits] = takeFigure(text, 2);
        if (minuteDigits != 2) return {};
        minutes = figure;
    } else if (digits != 2) {
        return {};
    }
    constexpr int farthest = 15;
    if (hours > farthest || minutes >= secondsInAMinute) return {};
    return hours * secondsInAnHour + minutes * secondsInAMinute;
}

/// "Z", "+02:00", "-0500", "+02", or nothing.
WrittenOffset takeOffset(std::string_view& text) {
    skipBlanks(text);
    if (text.empty()) return {.isUnderstood = true};
    if (takeLetter(text, 'Z')) return {.isUnderstood = true, .isThere = true};
    const char sign = text.front();
    if (sign != '+' && sign != '-') return {};
    text.remove_prefix(1);
    const auto seconds = takeHoursAndMinutes(text);
    if (!seconds) return {};
    return {.isUnderstood = true, .isThere = true, .seconds = sign == '-' ? -*seconds : *seconds};
}

std::optional<int> hourOf(int written, std::optional<char> half) {
    constexpr int noon = 12, hours = 24;
    if (!half) return written <= hours ? std::optional(written) : std::nullopt;
    if (written < 1 || written > noon) return {};
    return written % noon + (*half == 'P' ? noon : 0);
}

std::optional<WrittenTime> fromUnixSeconds(std::string_view text) {
    constexpr std::int64_t latest = 253'402'300'799;  // the end of the year 9999
    std::int64_t seconds = 0;
    const auto [end, fault] = std::from_chars(text.data(), text.data() + text.size(), seconds);
    std::string_view rest(end, static_cast<std::size_t>(text.data() + text.size() - end));
    if (fault != std::errc{} || seconds < 0 || seconds > latest) return {};
    if (rest.starts_with('.')) {
        rest.remove_prefix(1);
        while (!rest.empty() && isDigitOfTime(rest.front())) rest.remove_prefix(1);
    }
    if (!rest.empty()) return {};
    return WrittenTime{.second = seconds, .secondsAhead = 0};
}

}  // namespace

std::string_view withoutBlanks(std::string_view text) {
    skipBlanks(text);
    while (!text.empty() && (text.back() == ' ' || text.back() == '\t')) text.remove_suffix(1);
    return text;
}

std::optional<DayFigures> takeDay(std::string_view& text) {
    std::string_view rest = text;
    skipBlanks(rest);
    DayFigures day;
    char sign = 0;
    for (std::size_t i = 0; i < day.figures.size(); ++i) {
        if (i > 0) {
            if (rest.empty() || (rest.front() != '.' && rest.front() != '/' && rest.front() != '-')) return {};
            if (i > 1 && rest.front() != sign) return {};
            sign = rest.front();
            rest.remove_prefix(1);
        }
        std::tie(day.figures[i], day.lengths[i]) = takeFigure(rest, 4);
        if (day.lengths[i] == 0 || day.lengths[i] == 3) return {};
    }
    if (day.lengths[1] > 2 || (day.lengths[0] == 4 && day.lengths[2] == 4)) return {};
    text = rest;
    return day;
}

std::optional<int> takeTimeOfDay(std::string_view& text) {
    std::string_view rest = text;
    if (rest.starts_with('T')) rest.remove_prefix(1);
    skipBlanks(rest);
    const auto [written, hourDigits] = takeFigure(rest, 2);
    if (hourDigits == 0 || !rest.starts_with(':')) return {};
    rest.remove_prefix(1);
    const auto [minute, minuteDigits] = takeFigure(rest, 2);
    if (minuteDigits != 2 || minute >= secondsInAMinute) return {};
    int second = 0;
    if (rest.starts_with(':')) {
        rest.remove_prefix(1);
        const auto [figure, digits] = takeFigure(rest, 2);
        if (digits != 2 || figure >= secondsInAMinute) return {};
        second = figure;
        if (rest.starts_with('.') || rest.starts_with(',')) {
            rest.remove_prefix(1);
            while (!rest.empty() && isDigitOfTime(rest.front())) rest.remove_prefix(1);
        }
    }
    const std::optional<int> hour = hourOf(written, takeHalfOfDay(rest));
    if (!hour) return {};
    const int ofDay = *hour * secondsInAnHour + minute * secondsInAMinute + second;
    if (ofDay > core::secondsInADay) return {};
    text = rest;
    return ofDay;
}

std::optional<std::int64_t> dayOf(const DayFigures& day, core::TimeForm form) {
    std::size_t ofYear = 2, ofMonth = 1, ofDay = 0;
    if (form == core::TimeForm::MonthDayYear) std::swap(ofMonth, ofDay);
    if (form == core::TimeForm::YearMonthDay) std::swap(ofYear, ofDay);
    if (day.lengths[ofMonth] > 2 || day.lengths[ofDay] > 2 || day.lengths[ofYear] == 1) return {};
    const int year = day.figures[ofYear] + (day.lengths[ofYear] == 2 ? thisCentury : 0);
    const core::Date date{std::chrono::year(year), std::chrono::month(static_cast<unsigned>(day.figures[ofMonth])),
                          std::chrono::day(static_cast<unsigned>(day.figures[ofDay]))};
    if (!date.ok() || year < earliestYear) return {};
    return std::chrono::sys_days(date).time_since_epoch().count();
}

std::optional<WrittenTime> writtenTime(std::string_view text, core::TimeForm form) {
    text = withoutBlanks(text);
    if (form == core::TimeForm::UnixSeconds) return fromUnixSeconds(text);
    const auto figures = takeDay(text);
    if (!figures) return {};
    const auto day = dayOf(*figures, form);
    if (!day) return {};
    const bool isDayAlone = text.empty();
    const std::optional<int> ofDay = isDayAlone ? std::optional(0) : takeTimeOfDay(text);
    if (!ofDay) return {};
    const WrittenOffset offset = takeOffset(text);
    if (!offset.isUnderstood || !text.empty()) return {};
    return WrittenTime{.second = *day * core::secondsInADay + *ofDay, .secondsAhead = offset.ahead()};
}

std::optional<WrittenTime> writtenTime(std::string_view day, std::string_view timeOfDay, core::TimeForm form) {
    day = withoutBlanks(day);
    timeOfDay = withoutBlanks(timeOfDay);
    const auto figures = takeDay(day);
    if (!figures || !day.empty()) return {};
    const auto ofEpoch = dayOf(*figures, form);
    const auto ofDay = takeTimeOfDay(timeOfDay);
    if (!ofEpoch || !ofDay) return {};
    const WrittenOffset offset = takeOffset(timeOfDay);
    if (!offset.isUnderstood || !timeOfDay.empty()) return {};
    return WrittenTime{.second = *ofEpoch * core::secondsInADay + *ofDay, .secondsAhead = offset.ahead()};
}

}  // namespace logger
