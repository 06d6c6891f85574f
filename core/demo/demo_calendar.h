// SPDX-License-Identifier: MIT
// The demo's days: two growing seasons of 210 days whose first days are a year apart. The second ends today. Inside the
// generator days are counted from the first day of the first season.
#pragma once

#include "core/units/days.h"

namespace core {

struct DemoCalendar {
    static constexpr int seasonLength = 210;
    static constexpr int secondSeason = 365;
    static constexpr int lastDay = secondSeason + seasonLength - 1;

    Date today{};

    [[nodiscard]] Date dateOf(int day) const { return addDays(today, day - lastDay); }
};

/// Days from `first` to `last`, both included.
struct DaySpan {
    int first{};
    int last{};

    [[nodiscard]] bool holds(int day) const { return day >= first && day <= last; }
};

// What befell the place in its second season.
inline constexpr DaySpan coldSpell{DemoCalendar::secondSeason + 96, DemoCalendar::secondSeason + 122};
inline constexpr DaySpan pestOutbreak{DemoCalendar::secondSeason + 146, DemoCalendar::secondSeason + 174};
inline constexpr int stationWithPests = 2;

}  // namespace core
