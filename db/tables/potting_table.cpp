// SPDX-License-Identifier: MIT
#include "db/tables/potting_table.h"

#include "db/tables/sql_text.h"

namespace db {

namespace {

constexpr const char* insertPotting = R"(
    INSERT INTO pottings (id, batch_id, counted_on, potted, lost, note) VALUES (?1, ?2, ?3, ?4, ?5, ?6))";
constexpr const char* updatePotting = R"(
    UPDATE pottings SET batch_id = ?2, counted_on = ?3, potted = ?4, lost = ?5, note = ?6 WHERE id = ?1)";
constexpr const char* deletePottingRow = "DELETE FROM pottings WHERE id = ?1";
constexpr const char* deletePottingsOfBatch = "DELETE FROM pottings WHERE batch_id = ?1";
constexpr char pottingColumns[] = "SELECT id, batch_id, counted_on, potted, lost, note FROM pottings";
constexpr auto selectPottingRow = joined(pottingColumns, " WHERE id = ?1");
constexpr auto selectPottings = joined(pottingColumns, " ORDER BY counted_on, id");
constexpr auto selectPottingsOf = joined(pottingColumns, " WHERE batch_id = ?1 ORDER BY counted_on, id");

core::Potting pottingFrom(const Query& row) {
    return {.id = row.id<core::PottingId>(0),
            .batch = row.id<core::BatchId>(1),
            .countedOn = row.date(2),
            .potted = row.number(3),
            .lost = row.number(4),
            .note = row.text(5)};
}

int runPotting(Connection& connection, const char* sql, const core::Potting& potting) {
    return connection.run(sql, potting.id, potting.batch, potting.countedOn, potting.potted, potting.lost,
                          potting.note);
}

}  // namespace

void insertRow(Connection& connection, const core::Potting& potting) {
    runPotting(connection, insertPotting, potting);
}

bool updateRow(Connection& connection, const core::Potting& potting) {
    return runPotting(connection, updatePotting, potting) == 1;
}

bool deleteRow(Connection& connection, core::PottingId id) {
    return connection.run(deletePottingRow, id) == 1;
}

void deletePottingsOf(Connection& connection, core::BatchId batch) {
    connection.run(deletePottingsOfBatch, batch);
}

std::optional<core::Potting> pottingIn(Connection& connection, core::PottingId id) {
    Query row = connection.query(selectPottingRow.data(), id);
    if (!row.step()) return std::nullopt;
    return pottingFrom(row);
}

std::vector<core::Potting> pottingsOf(Connection& connection, core::BatchId batch) {
    std::vector<core::Potting> all;
    for (Query row = connection.query(selectPottingsOf.data(), batch); row.step();) all.push_back(pottingFrom(row));
    return all;
}

std::vector<core::Potting> allPottings(Connection& connection) {
    std::vector<core::Potting> all;
    for (Query row = connection.query(selectPottings.data()); row.step();) all.push_back(pottingFrom(row));
    return all;
}

}  // namespace db
