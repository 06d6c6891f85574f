// SPDX-License-Identifier: MIT
#include "app/console/calendar_output.h"

#include "app/console/arguments.h"
#include "app/console/words.h"
#include "app/plot/whole_file.h"

namespace console {

void requireCalendarName(const std::string& file) {
    if (!file.ends_with(".ics") && !file.ends_with(".ICS"))
        throw WrongArgument(filled(tr("--ics is %1; a file whose name ends in .ics is allowed."), {shown(file)}));
}

void writeCalendar(const std::string& file, const std::string& name, std::span<const report::CalendarDay> days,
                   const Surroundings& surroundings) {
    const std::string text = report::calendarFile(name, days, surroundings.clock());
    plot::writeWholeFile(QString::fromStdString(file), QByteArray::fromStdString(text));
}

}  // namespace console
