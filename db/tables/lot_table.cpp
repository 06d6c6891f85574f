// SPDX-License-Identifier: MIT
#include "db/tables/lot_table.h"

namespace db {

namespace {

constexpr const char* insertLot = R"(
    INSERT INTO lots (id, name, treatment_id, medium_id, used_from, made_on, note)
    VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7))";
constexpr const char* updateLot = R"(
    UPDATE lots SET name = ?2, treatment_id = ?3, medium_id = ?4, used_from = ?5, made_on = ?6, note = ?7
    WHERE id = ?1)";
constexpr const char* deleteLot = "DELETE FROM lots WHERE id = ?1";
constexpr const char* selectLots = R"(
    SELECT id, name, treatment_id, medium_id, used_from, made_on, note FROM lots ORDER BY used_from, id)";

int runLot(Connection& connection, const char* sql, const core::Lot& lot) {
    return connection.run(sql, lot.id, lot.name, lot.treatment, lot.medium, lot.usedFrom, lot.madeOn, lot.note);
}

}  // namespace

void insertRow(Connection& connection, const core::Lot& lot) {
    runLot(connection, insertLot, lot);
}

bool updateRow(Connection& connection, const core::Lot& lot) {
    return runLot(connection, updateLot, lot) == 1;
}

bool deleteRow(Connection& connection, core::LotId id) {
    return connection.run(deleteLot, id) == 1;
}

std::vector<core::Lot> allLots(Connection& connection) {
    std::vector<core::Lot> all;
    for (Query row = connection.query(selectLots); row.step();)
        all.push_back({.id = row.id<core::LotId>(0),
                       .name = row.text(1),
                       .treatment = row.id<core::TreatmentId>(2),
                       .medium = row.id<core::MediumId>(3),
                       .usedFrom = row.date(4),
                       .madeOn = row.optionalDate(5),
                       .note = row.text(6)});
    return all;
}

}  // namespace db
