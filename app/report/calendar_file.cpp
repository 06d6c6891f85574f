// SPDX-License-Identifier: MIT
#include "app/report/calendar_file.h"

#include <libical/ical.h>

#include <QCoreApplication>
#include <algorithm>
#include <cstdlib>
#include <memory>

#include "core/due/due_today.h"

namespace report {
namespace {

constexpr const char* producer = "-//Strikebook//Strikebook//EN";
constexpr const char* uidEnd = "@strikebook";
constexpr int reminderHour = 8;

struct FreeComponent {
    void operator()(icalcomponent* component) const { icalcomponent_free(component); }
};
struct FreeText {
    void operator()(char* text) const { std::free(text); }  // NOLINT: libical allocates with malloc
};

icaltimetype wholeDay(core::Date day) {
    icaltimetype time = icaltime_null_date();
    time.year = static_cast<int>(day.year());
    time.month = static_cast<int>(static_cast<unsigned>(day.month()));
    time.day = static_cast<int>(static_cast<unsigned>(day.day()));
    time.is_date = 1;
    return time;
}

icaltimetype utcMoment(core::Moment moment) {
    const auto day = std::chrono::floor<std::chrono::days>(moment);
    const std::chrono::hh_mm_ss clock(moment - day);
    icaltimetype time = wholeDay(core::Date(day));
    time.hour = static_cast<int>(clock.hours().count());
    time.minute = static_cast<int>(clock.minutes().count());
    time.second = static_cast<int>(clock.seconds().count());
    time.is_date = 0;
    return icaltime_set_timezone(&time, icaltimezone_get_utc_timezone());
}

/// The parent takes the component over.
icalcomponent* reminderFor(const CalendarDay& day) {
    constexpr int hoursOfDay = 24, secondsOfHour = 3600;
    icalcomponent* alarm = icalcomponent_new_valarm();
    icalcomponent_add_property(alarm, icalproperty_new_action(ICAL_ACTION_DISPLAY));
    icalcomponent_add_property(alarm, icalproperty_new_description(day.summary.c_str()));
    const int seconds = (reminderHour - hoursOfDay * day.remindDaysBefore) * secondsOfHour;
    icalcomponent_add_property(alarm, icalproperty_new_trigger(icaltriggertype_from_int(seconds)));
    return alarm;
}

icalcomponent* eventOf(const CalendarDay& day, icaltimetype stamp) {
    icalcomponent* event = icalcomponent_new_vevent();
    icalcomponent_add_property(event, icalproperty_new_uid((day.uid + uidEnd).c_str()));
    icalcomponent_add_property(event, icalproperty_new_dtstamp(stamp));
    icalcomponent_add_property(event, icalproperty_new_dtstart(wholeDay(day.on)));
    icalcomponent_add_property(event, icalproperty_new_dtend(wholeDay(core::addDays(day.on, 1))));
    icalcomponent_add_property(event, icalproperty_new_summary(day.summary.c_str()));
    if (!day.description.empty())
        icalcomponent_add_property(event, icalproperty_new_description(day.description.c_str()));
    icalcomponent_add_property(event, icalproperty_new_transp(ICAL_TRANSP_TRANSPARENT));  // nobody is busy all day
    icalcomponent_add_component(event, reminderFor(day));
    return event;
}

QString tr(const char* sentence) {
    return QCoreApplication::translate("report", sentence);
}

QString named(const std::string& text) {
    return QString::fromStdString(text);
}

}  // namespace

std::string calendarFile(const std::string& name, std::span<const CalendarDay> days, core::Moment stamp) {
    const std::unique_ptr<icalcomponent, FreeComponent> calendar(icalcomponent_new_vcalendar());
    icalcomponent_add_property(calendar.get(), icalproperty_new_prodid(producer));
    icalcomponent_add_property(calendar.get(), icalproperty_new_version("2.0"));
    icalcomponent_add_property(calendar.get(), icalproperty_new_calscale("GREGORIAN"));
    icalcomponent_add_property(calendar.get(), icalproperty_new_method(ICAL_METHOD_PUBLISH));
    icalproperty* title = icalproperty_new_x(name.c_str());
    icalproperty_set_x_name(title, "X-WR-CALNAME");
    icalcomponent_add_property(calendar.get(), title);
    const icaltimetype written = utcMoment(stamp);
    for (const CalendarDay& day : days) icalcomponent_add_component(calendar.get(), eventOf(day, written));
    const std::unique_ptr<char, FreeText> text(icalcomponent_as_ical_string_r(calendar.get()));
    return text.get();
}

std::vector<CalendarDay> calendarOf(std::span<const core::PlanDay> days, const std::string& key) {
    std::vector<CalendarDay> calendar;
    for (const core::PlanDay& day : days)
        calendar.push_back({.uid = key + "-" + std::string(core::wordFor(day.kind)),
                            .on = day.on,
                            .summary = day.what,
                            .description = {},
                            .remindDaysBefore = 1});
    return calendar;
}

std::vector<CalendarDay> calendarOf(std::span<const core::BatchLine> lines, const core::Shelves& shelves,
                                    core::Date today) {
    std::vector<CalendarDay> calendar;
    for (const core::BatchLine& line : lines) {
        if (core::isClosed(line.batch, line.tally)) continue;
        const core::Plant* plant = core::find(shelves.plants, line.batch.plant);
        const core::Station* station = core::find(shelves.stations, line.batch.station);
        const QString where = station == nullptr ? tr("no station") : named(station->name);
        const QString what = plant == nullptr ? QString() : named(core::fullName(*plant));
        calendar.push_back({.uid = "look-" + line.batch.code,
                            .on = std::max(today, core::nextCheckOn(line, shelves)),
                            .summary = tr("Look at %1, %2").arg(named(line.batch.code), where).toStdString(),
                            .description = tr("%1: %2 of %3 not yet decided")
                                               .arg(what)
                                               .arg(line.tally.undecided())
                                               .arg(line.tally.stuck)
                                               .toStdString()});
    }
    std::ranges::stable_sort(calendar, {}, &CalendarDay::on);
    return calendar;
}

}  // namespace report
