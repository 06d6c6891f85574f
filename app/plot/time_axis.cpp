// SPDX-License-Identifier: MIT
#include "app/plot/time_axis.h"

#include <QDate>
#include <QLocale>
#include <algorithm>
#include <array>

#include "app/plot/local_time.h"

namespace plot {

namespace {

constexpr std::array hourSteps{1, 2, 3, 6, 12};
constexpr std::array dayDistances{1, 2, 7, 14, 28, 56, 91, 182, 364, 728, 1820, 3640};
constexpr int hoursADay = 24;

QString dayTickText(core::Date day, int step) {
    const QDate date(static_cast<int>(day.year()), static_cast<int>(static_cast<unsigned>(day.month())),
                     static_cast<int>(static_cast<unsigned>(day.day())));
    constexpr int manyDays = 91;
    return QLocale().toString(date, step < manyDays ? QStringLiteral("d MMM") : QStringLiteral("MMM yyyy"));
}

std::vector<TimeTick> hourTicks(core::Moment from, core::Moment to, int step) {
    std::vector<TimeTick> ticks;
    for (core::Date day = localDay(from); momentOf(day, 0) <= to; day = core::addDays(day, 1))
        for (int hour = 0; hour < hoursADay; hour += step) {
            const core::Moment at = momentOf(day, 60 * hour);
            if (at >= from && at <= to) ticks.push_back({at, hour == 0 ? dayTickText(day, 1) : timeText(at)});
        }
    return ticks;
}

std::vector<TimeTick> dayTicks(core::Moment from, core::Moment to, int step) {
    std::vector<TimeTick> ticks;
    // Counted from a Monday, so that weeks begin on Mondays whatever the span.
    const core::Date monday{std::chrono::year{2001} / 1 / 1};
    const int behind = core::daysBetween(monday, localDay(from)) % step;
    core::Date day = core::addDays(localDay(from), behind > 0 ? step - behind : -behind);
    for (; momentOf(day, 0) <= to; day = core::addDays(day, step))
        if (momentOf(day, 0) >= from) ticks.push_back({momentOf(day, 0), dayTickText(day, step)});
    return ticks;
}

}  // namespace

std::vector<TimeTick> timeTicks(core::Moment from, core::Moment to, int most) {
    const double hours = static_cast<double>((to - from).count()) / 3600;
    const double least = hours / std::max(1, most);
    for (const int step : hourSteps)
        if (step >= least) return hourTicks(from, to, step);
    for (const int step : dayDistances)
        if (step * hoursADay >= least) return dayTicks(from, to, step);
    return dayTicks(from, to, dayDistances.back());
}

}  // namespace plot
