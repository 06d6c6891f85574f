// SPDX-License-Identifier: MIT
// Days as a calendar file that phones and calendars take in (iCalendar, RFC 5545): whole days, each with a reminder.
#pragma once

#include <span>
#include <string>
#include <vector>

#include "core/planning/when.h"
#include "core/records.h"
#include "core/units/days.h"
#include "core/units/moment.h"

namespace report {

struct CalendarDay {
    std::string
        uid;  // the same whenever the same thing is written again, so that a calendar changes it instead of adding another
    core::Date on{};
    std::string summary;
    std::string description{};
    int remindDaysBefore{};  // at eight in the morning of that day
};

/// `stamp` is the moment of writing. Lines end in CR LF and are folded; whatever the texts hold is escaped. At least one day: a calendar
/// without any is not allowed by the standard.
[[nodiscard]] std::string calendarFile(const std::string& name, std::span<const CalendarDay> days, core::Moment stamp);

/// A plan's days, a reminder on the day before each. `key` is what the plan is known by for good.
[[nodiscard]] std::vector<CalendarDay> calendarOf(std::span<const core::PlanDay> days, const std::string& key);
/// The next look at each open batch; what is overdue stands on `today`.
[[nodiscard]] std::vector<CalendarDay> calendarOf(std::span<const core::BatchLine> lines, const core::Shelves& shelves,
                                                  core::Date today);

}  // namespace report
