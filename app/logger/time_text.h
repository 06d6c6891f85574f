// SPDX-License-Identifier: MIT
// Days and times of day as loggers write them: "01.06.2026 13:05:00", "6/1/26 1:05 PM", "2026-06-01T13:05:00+02:00", 1780311900. Takes apart
// what stands there and never guesses: which of the figures is the day, the form says.
#pragma once

#include <array>
#include <cstdint>
#include <optional>
#include <string_view>

#include "core/climate/logger_mapping.h"

namespace logger {

/// Three figures with one sign between them: point, slash or hyphen. Two figures of a year belong to this century.
struct DayFigures {
    std::array<int, 3> figures{};
    std::array<int, 3> lengths{};  // digits of each

    bool operator==(const DayFigures&) const = default;
};

/// As it is written, by the clock that wrote it.
struct WrittenTime {
    std::int64_t second{};              // since 1970-01-01 00:00 of that clock
    std::optional<int> secondsAhead{};  // of UTC, where the text says so

    bool operator==(const WrittenTime&) const = default;
};

/// Both take what they understand off the front of the text, blanks and a "T" between day and time included.
[[nodiscard]] std::optional<DayFigures> takeDay(std::string_view& text);
/// Seconds of the day, 0 to 86,400 (24:00 is the end of the day); parts of a second are cut off. "1:05 PM", "13:05", "13:05:00.25".
[[nodiscard]] std::optional<int> takeTimeOfDay(std::string_view& text);

/// Days since 1970-01-01; nothing where the calendar has no such day.
[[nodiscard]] std::optional<std::int64_t> dayOf(const DayFigures& day, core::TimeForm form);

/// The whole text: day, time of day (midnight where there is none), perhaps "Z" or "+02:00"; or seconds since 1970.
[[nodiscard]] std::optional<WrittenTime> writtenTime(std::string_view text, core::TimeForm form);
/// Of two columns.
[[nodiscard]] std::optional<WrittenTime> writtenTime(std::string_view day, std::string_view timeOfDay,
                                                     core::TimeForm form);

[[nodiscard]] std::string_view withoutBlanks(std::string_view text);

}  // namespace logger
