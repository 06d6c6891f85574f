// SPDX-License-Identifier: MIT
#include "db/tables/station_table.h"

namespace db {

namespace {

constexpr const char* insertStation = R"(
    INSERT INTO stations (id, name, method_id, position_rows, position_columns, walking_order, note, is_retired,
                          is_staggered, blocked)
    VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7, ?8, ?9, ?10))";
constexpr const char* updateStation = R"(
    UPDATE stations SET name = ?2, method_id = ?3, position_rows = ?4, position_columns = ?5, walking_order = ?6, note = ?7, is_retired = ?8,
                        is_staggered = ?9, blocked = ?10
    WHERE id = ?1)";
constexpr const char* deleteStation = "DELETE FROM stations WHERE id = ?1";
constexpr const char* selectStations = R"(
    SELECT id, name, method_id, position_rows, position_columns, walking_order, note, is_retired, is_staggered, blocked
    FROM stations ORDER BY name COLLATE NOCASE, id)";
constexpr const char* findStationOfMethod = "SELECT id FROM stations WHERE method_id = ?1 LIMIT 1";

core::Station stationFrom(const Query& row) {
    return {.id = row.id<core::StationId>(0),
            .name = row.text(1),
            .method = row.id<core::MethodId>(2),
            .rows = row.number(3),
            .columns = row.number(4),
            .isStaggered = row.truth(8),
            .blocked = row.text(9),
            .walkingOrder = row.number(5),
            .note = row.text(6),
            .isRetired = row.truth(7)};
}

int runStation(Connection& connection, const char* sql, const core::Station& station) {
    return connection.run(sql, station.id, station.name, station.method, station.rows, station.columns,
                          station.walkingOrder, station.note, station.isRetired, station.isStaggered, station.blocked);
}

}  // namespace

void insertRow(Connection& connection, const core::Station& station) {
    runStation(connection, insertStation, station);
}

bool updateRow(Connection& connection, const core::Station& station) {
    return runStation(connection, updateStation, station) == 1;
}

bool deleteRow(Connection& connection, core::StationId id) {
    return connection.run(deleteStation, id) == 1;
}

std::vector<core::Station> allStations(Connection& connection) {
    std::vector<core::Station> all;
    for (Query row = connection.query(selectStations); row.step();) all.push_back(stationFrom(row));
    return all;
}

bool hasStations(Connection& connection, core::MethodId method) {
    return connection.query(findStationOfMethod, method).step();
}

}  // namespace db
