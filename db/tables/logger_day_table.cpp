// SPDX-License-Identifier: MIT
#include "db/tables/logger_day_table.h"

#include <algorithm>

#include "db/logbook_error.h"
#include "db/tables/sample_blob.h"
#include "db/tables/sql_text.h"

namespace db {

namespace {

constexpr const char* putLoggerDay = R"(
    INSERT INTO logger_days (station_id, quantity, day, samples) VALUES (?1, ?2, ?3, ?4)
    ON CONFLICT (station_id, quantity, day) DO UPDATE SET samples = excluded.samples)";
constexpr const char* deleteLoggerDayRow =
    "DELETE FROM logger_days WHERE station_id = ?1 AND quantity = ?2 AND day = ?3";
constexpr char loggerDayColumns[] = "SELECT station_id, quantity, day, samples FROM logger_days d";
constexpr char inOrderOfDays[] = " ORDER BY station_id, quantity, day";
constexpr auto selectLoggerDay = joined(loggerDayColumns, " WHERE station_id = ?1 AND quantity = ?2 AND day = ?3");
constexpr auto selectLoggerDays = joined(loggerDayColumns, inOrderOfDays);
constexpr auto selectLoggerDaysOf = joined(loggerDayColumns, " WHERE station_id = ?1", inOrderOfDays);
constexpr auto selectLoggerDaysBetween =
    joined(loggerDayColumns, " WHERE station_id = ?1 AND quantity = ?2 AND day BETWEEN ?3 AND ?4", inOrderOfDays);
constexpr const char* selectLoggedDays =
    "SELECT day FROM logger_days WHERE station_id = ?1 AND quantity = ?2 AND day BETWEEN ?3 AND ?4 ORDER BY day";
constexpr auto selectLastDays = joined(loggerDayColumns, R"(
    WHERE day = (SELECT MAX(day) FROM logger_days l WHERE l.station_id = d.station_id AND l.quantity = d.quantity))",
                                       inOrderOfDays);
// The length is known without reading the samples.
constexpr const char* selectLoggerSpans = R"(
    SELECT station_id, quantity, MIN(day), MAX(day), SUM(length(samples) / 12)
    FROM logger_days GROUP BY station_id, quantity ORDER BY station_id, quantity)";
constexpr const char* findLoggerDayOf = "SELECT day FROM logger_days WHERE station_id = ?1 LIMIT 1";

core::Quantity quantityAt(const Query& row, int column) {
    // The table's CHECKs let no other words in.
    return core::quantityFrom(row.text(column)).value_or(core::Quantity::AirTemperature);
}

/// With what is wrong with its samples, or nothing.
std::string takeLoggerDay(const Query& row, core::LoggerDay& day) {
    day = {.station = row.id<core::StationId>(0), .quantity = quantityAt(row, 1), .day = row.date(2), .samples = {}};
    auto samples = samplesFrom(row.blob(3));
    if (!samples) return "The logger's values of " + core::isoText(day.day) + " end in the middle of one.";
    day.samples = std::move(*samples);
    return core::faultInSamples(day);
}

core::LoggerDay loggerDayFrom(const Query& row) {
    core::LoggerDay day;
    if (const std::string fault = takeLoggerDay(row, day); !fault.empty())
        throw LogbookError("The logbook holds what no logger can have recorded. " + fault + " Restore a backup.");
    return day;
}

std::string_view wordOf(core::Quantity quantity) {
    return core::factsOf(quantity).word;
}

}  // namespace

void putRow(Connection& connection, const core::LoggerDay& day) {
    connection.run(putLoggerDay, day.station, wordOf(day.quantity), day.day, blobOf(day.samples));
}

bool deleteLoggerDay(Connection& connection, core::StationId station, core::Quantity quantity, core::Date day) {
    return connection.run(deleteLoggerDayRow, station, wordOf(quantity), day) == 1;
}

std::vector<core::Sample> samplesOf(Connection& connection, core::StationId station, core::Quantity quantity,
                                    core::Date day) {
    Query row = connection.query(selectLoggerDay.data(), station, wordOf(quantity), day);
    return row.step() ? loggerDayFrom(row).samples : std::vector<core::Sample>{};
}

void forEachLoggerDay(Connection& connection, const std::function<void(core::LoggerDay)>& visit) {
    for (Query row = connection.query(selectLoggerDays.data()); row.step();) visit(loggerDayFrom(row));
}

std::vector<core::LoggerDay> loggerDaysOf(Connection& connection, core::StationId station) {
    std::vector<core::LoggerDay> all;
    for (Query row = connection.query(selectLoggerDaysOf.data(), station); row.step();)
        all.push_back(loggerDayFrom(row));
    return all;
}

std::vector<core::Date> loggedDays(Connection& connection, core::StationId station, core::Quantity quantity,
                                   core::Date from, core::Date until) {
    std::vector<core::Date> days;
    for (Query row = connection.query(selectLoggedDays, station, wordOf(quantity), from, until); row.step();)
        days.push_back(row.date(0));
    return days;
}

std::vector<core::TimedValue> loggerValuesOf(Connection& connection, core::StationId station, core::Quantity quantity,
                                             core::Moment from, core::Moment until) {
    const core::Date first(std::chrono::floor<std::chrono::days>(from));
    const core::Date last(std::chrono::floor<std::chrono::days>(until));
    std::vector<core::TimedValue> values;
    for (Query row = connection.query(selectLoggerDaysBetween.data(), station, wordOf(quantity), first, last);
         row.step();) {
        const core::LoggerDay day = loggerDayFrom(row);
        for (const core::Sample& sample : day.samples)
            if (const core::Moment at = core::momentOf(day, sample); at >= from && at <= until)
                values.push_back({.at = at, .value = sample.value});
    }
    return values;
}

std::vector<core::LoggerSpan> allLoggerSpans(Connection& connection) {
    std::vector<core::LoggerSpan> all;
    for (Query row = connection.query(selectLoggerSpans); row.step();)
        all.push_back({.station = row.id<core::StationId>(0),
                       .quantity = quantityAt(row, 1),
                       .firstDay = row.date(2),
                       .lastDay = row.date(3),
                       .samples = row.bigNumber(4)});
    return all;
}

std::vector<core::Reading> newestLoggerValuesIn(Connection& connection) {
    std::vector<core::Reading> all;
    for (Query row = connection.query(selectLastDays.data()); row.step();) {
        const core::LoggerDay day = loggerDayFrom(row);
        all.push_back({.id = {},
                       .station = day.station,
                       .quantity = day.quantity,
                       .readAt = core::momentOf(day, day.samples.back()),
                       .value = day.samples.back().value,
                       .note = {}});
    }
    return all;
}

bool hasLoggerDays(Connection& connection, core::StationId station) {
    return connection.query(findLoggerDayOf, station).step();
}

std::vector<std::string> faultsInLoggerDays(Connection& connection) {
    std::vector<std::string> faults;
    core::LoggerDay day;
    for (Query row = connection.query(selectLoggerDays.data()); row.step();)
        if (std::string fault = takeLoggerDay(row, day); !fault.empty()) faults.push_back(std::move(fault));
    return faults;
}

}  // namespace db
