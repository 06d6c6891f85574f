// SPDX-License-Identifier: MIT
#include "db/tables/reading_table.h"

#include "db/tables/sql_text.h"

namespace db {

namespace {

constexpr const char* insertReading = R"(
    INSERT INTO readings (id, station_id, quantity, read_at, value, note)
    VALUES (?1, ?2, ?3, ?4, ?5, ?6))";
constexpr const char* updateReading = R"(
    UPDATE readings SET station_id = ?2, quantity = ?3, read_at = ?4, value = ?5, note = ?6
    WHERE id = ?1)";
constexpr const char* deleteReadingRow = "DELETE FROM readings WHERE id = ?1";
constexpr char readingColumns[] = "SELECT r.id, r.station_id, r.quantity, r.read_at, r.value, r.note FROM readings r";
constexpr auto selectReadingRow = joined(readingColumns, " WHERE r.id = ?1");
constexpr auto selectReadings = joined(readingColumns, " ORDER BY r.read_at, r.quantity, r.id");
constexpr auto selectReadingsOf = joined(
    readingColumns, " WHERE r.station_id = ?1 AND r.read_at BETWEEN ?2 AND ?3 ORDER BY r.read_at, r.quantity, r.id");
// The index ends with read_at, so that the newest of each pair is found without reading the others.
constexpr auto selectNewest = joined(readingColumns, R"(
    JOIN (SELECT s.id AS station, q.word AS quantity,
                 (SELECT n.id FROM readings n WHERE n.station_id = s.id AND n.quantity = q.word
                  ORDER BY n.read_at DESC, n.id DESC LIMIT 1) AS reading
          FROM stations s CROSS JOIN (SELECT 'solution_ec' AS word UNION ALL SELECT 'solution_ph'
               UNION ALL SELECT 'solution_temperature' UNION ALL SELECT 'dissolved_oxygen'
               UNION ALL SELECT 'medium_temperature' UNION ALL SELECT 'air_temperature'
               UNION ALL SELECT 'relative_humidity' UNION ALL SELECT 'light'
               UNION ALL SELECT 'leaf_temperature') q) newest ON newest.reading = r.id
    ORDER BY r.station_id, r.quantity)");
constexpr const char* findReadingOf = "SELECT id FROM readings WHERE station_id = ?1 LIMIT 1";

core::Reading readingFrom(const Query& row) {
    // The table's CHECKs let no other words in.
    return {.id = row.id<core::ReadingId>(0),
            .station = row.id<core::StationId>(1),
            .quantity = core::quantityFrom(row.text(2)).value_or(core::Quantity::SolutionEc),
            .readAt = core::momentFromIso(row.text(3)).value_or(core::Moment{}),
            .value = row.real(4),
            .note = row.text(5)};
}

int runReading(Connection& connection, const char* sql, const core::Reading& reading) {
    return connection.run(sql, reading.id, reading.station, core::factsOf(reading.quantity).word,
                          core::isoText(reading.readAt), reading.value, reading.note);
}

}  // namespace

void insertRow(Connection& connection, const core::Reading& reading) {
    runReading(connection, insertReading, reading);
}

bool updateRow(Connection& connection, const core::Reading& reading) {
    return runReading(connection, updateReading, reading) == 1;
}

bool deleteRow(Connection& connection, core::ReadingId id) {
    return connection.run(deleteReadingRow, id) == 1;
}

std::optional<core::Reading> readingIn(Connection& connection, core::ReadingId id) {
    Query row = connection.query(selectReadingRow.data(), id);
    if (!row.step()) return std::nullopt;
    return readingFrom(row);
}

std::vector<core::Reading> allReadings(Connection& connection) {
    std::vector<core::Reading> all;
    for (Query row = connection.query(selectReadings.data()); row.step();) all.push_back(readingFrom(row));
    return all;
}

std::vector<core::Reading> readingsOf(Connection& connection, core::StationId station, core::Moment from,
                                      core::Moment until) {
    std::vector<core::Reading> all;
    for (Query row = connection.query(selectReadingsOf.data(), station, core::isoText(from), core::isoText(until));
         row.step();)
        all.push_back(readingFrom(row));
    return all;
}

std::vector<core::Reading> newestReadings(Connection& connection) {
    std::vector<core::Reading> all;
    for (Query row = connection.query(selectNewest.data()); row.step();) all.push_back(readingFrom(row));
    return all;
}

bool hasReadings(Connection& connection, core::StationId station) {
    return connection.query(findReadingOf, station).step();
}

}  // namespace db
