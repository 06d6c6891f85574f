// SPDX-License-Identifier: MIT
#include "app/logger/logger_text.h"

#include <algorithm>
#include <array>

#include "app/logger/logger_words.h"
#include "app/plot/local_time.h"
#include "app/plot/number_text.h"
#include "app/plot/quantity_text.h"
#include "core/records.h"

namespace logger {

namespace {

QString partText(std::size_t part, int count) {
    switch (part) {
        case 0:
            return count == 1 ? LoggerWords::tr("1 day") : LoggerWords::tr("%n days", nullptr, count);
        case 1:
            return count == 1 ? LoggerWords::tr("1 hour") : LoggerWords::tr("%n hours", nullptr, count);
        case 2:
            return count == 1 ? LoggerWords::tr("1 minute") : LoggerWords::tr("%n minutes", nullptr, count);
        default:
            return count == 1 ? LoggerWords::tr("1 second") : LoggerWords::tr("%n seconds", nullptr, count);
    }
}

QString quantitiesOf(core::StationId station, const core::LoggerMapping& mapping) {
    QStringList names;
    for (const core::LoggerColumn& column : mapping.columns)
        if (column.role == core::ColumnRole::Values && column.station == station)
            names << plot::quantityName(column.quantity);
    const QString last = names.takeLast();
    return names.isEmpty()
               ? last
               : LoggerWords::tr("%1 and %2", "list of quantities").arg(names.join(QStringLiteral(", ")), last);
}

}  // namespace

QString unitText(core::LoggerUnit unit) {
    switch (unit) {
        case core::LoggerUnit::Celsius:
            return QStringLiteral("°C");
        case core::LoggerUnit::Fahrenheit:
            return QStringLiteral("°F");
        case core::LoggerUnit::MilliSiemens:
            return QStringLiteral("mS/cm");
        case core::LoggerUnit::MicroSiemens:
            return QStringLiteral("µS/cm");
        case core::LoggerUnit::Ppm500:
            return LoggerWords::tr("ppm (500 scale)");
        case core::LoggerUnit::Ppm640:
            return LoggerWords::tr("ppm (640 scale)");
        case core::LoggerUnit::Ppm700:
            return LoggerWords::tr("ppm (700 scale)");
        case core::LoggerUnit::Ph:
            return {};
        case core::LoggerUnit::MilligramsPerLitre:
            return QStringLiteral("mg/L");
        case core::LoggerUnit::Percent:
            return QStringLiteral("%");
        case core::LoggerUnit::Micromoles:
            return QStringLiteral("µmol/m²/s");
        case core::LoggerUnit::Lux:
            break;
    }
    return LoggerWords::tr("lux");
}

QString timeFormText(core::TimeForm form) {
    switch (form) {
        case core::TimeForm::DayMonthYear:
            return LoggerWords::tr("day, month, year");
        case core::TimeForm::MonthDayYear:
            return LoggerWords::tr("month, day, year");
        case core::TimeForm::YearMonthDay:
            return LoggerWords::tr("year, month, day");
        case core::TimeForm::UnixSeconds:
            return LoggerWords::tr("seconds since 1970");
        case core::TimeForm::NotSettled:
            break;
    }
    return LoggerWords::tr("not settled", "order of day and month");
}

QString timeExample(core::TimeForm form, core::ColumnRole role) {
    const QString time = QStringLiteral("23:59");
    if (role == core::ColumnRole::TimeOfDay) return time;
    QString day = QStringLiteral("2026-12-31");
    if (form == core::TimeForm::UnixSeconds) return QStringLiteral("1798761540");
    if (form == core::TimeForm::DayMonthYear) day = QStringLiteral("31.12.2026");
    if (form == core::TimeForm::MonthDayYear) day = QStringLiteral("12/31/2026");
    return role == core::ColumnRole::Day ? day : day + u' ' + time;
}

QString durationText(std::chrono::seconds duration) {
    constexpr std::array<std::int64_t, 4> sizes{86'400, 3600, 60, 1};  // seconds of a day, an hour, a minute
    std::int64_t left = duration.count();
    QStringList parts;
    for (std::size_t i = 0; i < sizes.size() && parts.size() < 2; ++i) {
        const std::int64_t count = left / sizes[i];
        if (count == 0 && !parts.isEmpty()) break;
        if (count > 0) parts << partText(i, static_cast<int>(count));
        left %= sizes[i];
    }
    return parts.isEmpty() ? partText(3, 0) : parts.join(u' ');
}

QString gapText(const LogGap& gap) {
    return LoggerWords::tr("From %1 to %2: %3", "gap in the rows of a logger")
        .arg(plot::momentText(gap.from), plot::momentText(gap.to), durationText(gap.to - gap.from));
}

QString rowsText(std::int64_t rows) {
    return rows == 1 ? LoggerWords::tr("1 row") : LoggerWords::tr("%n rows", nullptr, static_cast<int>(rows));
}

QString valuesText(std::int64_t values) {
    return values == 1 ? LoggerWords::tr("1 value") : LoggerWords::tr("%n values", nullptr, static_cast<int>(values));
}

QString summaryText(const LogSummary& summary) {
    if (summary.rows == 0) return LoggerWords::tr("No row has a value.");
    if (summary.step.count() == 0)
        return LoggerWords::tr("%1 of %2.", "1 row of 14 March 2026, 10:42")
            .arg(rowsText(summary.rows), plot::momentText(summary.first));
    const auto count = static_cast<int>(summary.gaps.size());
    QString gaps = LoggerWords::tr("no gaps");
    if (count > 0) gaps = count == 1 ? LoggerWords::tr("1 gap") : LoggerWords::tr("%n gaps", nullptr, count);
    //: 1440 rows from 1 June 2026, 00:00 to 10 June 2026, 23:50, one in 10 minutes; 2 gaps.
    QString text = LoggerWords::tr("%1 from %2 to %3, one in %4; %5.")
                       .arg(rowsText(summary.rows), plot::momentText(summary.first), plot::momentText(summary.last),
                            durationText(summary.step), gaps);
    const auto blanks = static_cast<int>(summary.blanks), repeated = static_cast<int>(summary.repeated);
    if (blanks > 0)
        text += u' ' + (blanks == 1 ? LoggerWords::tr("1 cell has no reading.")
                                    : LoggerWords::tr("%n cells have no reading.", nullptr, blanks));
    if (repeated > 0)
        text +=
            u' ' + (repeated == 1 ? LoggerWords::tr("1 value stands there twice and counts once.")
                                  : LoggerWords::tr("%n values stand there twice and count once.", nullptr, repeated));
    return text;
}

QString targetText(const core::LoggerMapping& mapping, const core::Shelves& shelves) {
    QStringList targets;
    for (const core::Station& station : shelves.stations) {
        const bool isMeant = std::ranges::any_of(mapping.columns, [&](const core::LoggerColumn& column) {
            return column.role == core::ColumnRole::Values && column.station == station.id;
        });
        if (isMeant)
            targets << LoggerWords::tr("%1 of %2", "air temperature of a station")
                           .arg(quantitiesOf(station.id, mapping), QString::fromStdString(station.name));
    }
    return targets.join(QStringLiteral("; "));
}

}  // namespace logger
