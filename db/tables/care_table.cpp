// SPDX-License-Identifier: MIT
#include "db/tables/care_table.h"

#include "db/tables/sql_text.h"

namespace db {

namespace {

constexpr const char* insertCare = R"(
    INSERT INTO care (id, station_id, done_at, kind, note, litres)
    VALUES (?1, ?2, ?3, ?4, ?5, ?6))";
constexpr const char* updateCare = R"(
    UPDATE care SET station_id = ?2, done_at = ?3, kind = ?4, note = ?5, litres = ?6
    WHERE id = ?1)";
constexpr const char* deleteCareRow = "DELETE FROM care WHERE id = ?1";
constexpr char careColumns[] = "SELECT id, station_id, done_at, kind, note, litres FROM care";
constexpr auto selectCareRow = joined(careColumns, " WHERE id = ?1");
constexpr auto selectCare = joined(careColumns, " ORDER BY done_at, id");
constexpr auto selectCareOf =
    joined(careColumns, " WHERE station_id = ?1 AND done_at BETWEEN ?2 AND ?3 ORDER BY done_at, id");
constexpr const char* findCareOf = "SELECT id FROM care WHERE station_id = ?1 LIMIT 1";

core::Care careFrom(const Query& row) {
    // The table's CHECKs let no other words in.
    return {.id = row.id<core::CareId>(0),
            .station = row.id<core::StationId>(1),
            .doneAt = core::momentFromIso(row.text(2)).value_or(core::Moment{}),
            .kind = core::careKindFrom(row.text(3)).value_or(core::CareKind::Other),
            .note = row.text(4),
            .litres = row.isNull(5) ? std::optional<double>() : row.real(5)};
}

int runCare(Connection& connection, const char* sql, const core::Care& care) {
    return connection.run(sql, care.id, care.station, core::isoText(care.doneAt), core::wordFor(care.kind), care.note,
                          care.litres);
}

}  // namespace

void insertRow(Connection& connection, const core::Care& care) {
    runCare(connection, insertCare, care);
}

bool updateRow(Connection& connection, const core::Care& care) {
    return runCare(connection, updateCare, care) == 1;
}

bool deleteRow(Connection& connection, core::CareId id) {
    return connection.run(deleteCareRow, id) == 1;
}

std::optional<core::Care> careIn(Connection& connection, core::CareId id) {
    Query row = connection.query(selectCareRow.data(), id);
    if (!row.step()) return std::nullopt;
    return careFrom(row);
}

std::vector<core::Care> allCare(Connection& connection) {
    std::vector<core::Care> all;
    for (Query row = connection.query(selectCare.data()); row.step();) all.push_back(careFrom(row));
    return all;
}

std::vector<core::Care> careOf(Connection& connection, core::StationId station, core::Moment from, core::Moment until) {
    std::vector<core::Care> all;
    for (Query row = connection.query(selectCareOf.data(), station, core::isoText(from), core::isoText(until));
         row.step();)
        all.push_back(careFrom(row));
    return all;
}

bool hasCare(Connection& connection, core::StationId station) {
    return connection.query(findCareOf, station).step();
}

}  // namespace db
