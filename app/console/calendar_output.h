// SPDX-License-Identifier: MIT
// Calendar files that commands write for phones and calendars.
#pragma once

#include <span>
#include <string>

#include "app/console/surroundings.h"
#include "app/report/calendar_file.h"

namespace console {

/// Throws WrongArgument unless the name ends in .ics.
void requireCalendarName(const std::string& file);
/// Throws db::LogbookError when it can't be written. At least one day.
void writeCalendar(const std::string& file, const std::string& name, std::span<const report::CalendarDay> days,
                   const Surroundings& surroundings);

}  // namespace console
