// SPDX-License-Identifier: MIT
#include "app/plot/local_time.h"

#include <QCoreApplication>
#include <QDateTime>
#include <QLocale>

#include "app/plot/number_text.h"

namespace plot {
namespace {

struct LocalTime {
    Q_DECLARE_TR_FUNCTIONS(LocalTime)
};

constexpr int kMinutesADay = 24 * 60;

QDateTime localOf(core::Moment moment) {
    return QDateTime::fromSecsSinceEpoch(moment.time_since_epoch().count());
}

}  // namespace

core::Date localDay(core::Moment moment) {
    const QDate day = localOf(moment).date();
    return core::Date{std::chrono::year{day.year()}, std::chrono::month{static_cast<unsigned>(day.month())},
                      std::chrono::day{static_cast<unsigned>(day.day())}};
}

int localMinute(core::Moment moment) {
    const QTime time = localOf(moment).time();
    return 60 * time.hour() + time.minute();
}

core::Moment momentOf(core::Date day, int minute) {
    const QDate date(static_cast<int>(day.year()), static_cast<int>(static_cast<unsigned>(day.month())),
                     static_cast<int>(static_cast<unsigned>(day.day())));
    return core::Moment{std::chrono::seconds{QDateTime(date, QTime(minute / 60, minute % 60)).toSecsSinceEpoch()}};
}

double daysSince(core::Date start, core::Moment moment) {
    return core::daysBetween(start, localDay(moment)) + static_cast<double>(localMinute(moment)) / kMinutesADay;
}

QString timeText(core::Moment moment) {
    return QLocale().toString(localOf(moment).time(), QLocale::ShortFormat);
}

QString momentText(core::Moment moment) {
    return LocalTime::tr("%1, %2", "day, hour").arg(dateText(localDay(moment)), timeText(moment));
}

}  // namespace plot
