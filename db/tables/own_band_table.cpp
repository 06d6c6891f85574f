// SPDX-License-Identifier: MIT
#include "db/tables/own_band_table.h"

#include <algorithm>
#include <tuple>

namespace db {

namespace {

constexpr const char* insertOwnBand = R"(
    INSERT INTO own_bands (id, stage, quantity, plant_id, low, high, note)
    VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7))";
constexpr const char* updateOwnBand = R"(
    UPDATE own_bands SET stage = ?2, quantity = ?3, plant_id = ?4, low = ?5, high = ?6, note = ?7
    WHERE id = ?1)";
constexpr const char* deleteOwnBand = "DELETE FROM own_bands WHERE id = ?1";
constexpr const char* selectOwnBands = "SELECT id, stage, quantity, plant_id, low, high, note FROM own_bands";
constexpr const char* findOwnBandOfPlant = "SELECT id FROM own_bands WHERE plant_id = ?1 LIMIT 1";

std::optional<double> endIn(const Query& row, int column) {
    if (row.isNull(column)) return {};
    return row.real(column);
}

int runOwnBand(Connection& connection, const char* sql, const core::OwnBand& band) {
    return connection.run(sql, band.id, core::wordFor(band.stage), core::factsOf(band.quantity).word, band.plant,
                          band.low, band.high, band.note);
}

}  // namespace

void insertRow(Connection& connection, const core::OwnBand& band) {
    runOwnBand(connection, insertOwnBand, band);
}

bool updateRow(Connection& connection, const core::OwnBand& band) {
    return runOwnBand(connection, updateOwnBand, band) == 1;
}

bool deleteRow(Connection& connection, core::OwnBandId id) {
    return connection.run(deleteOwnBand, id) == 1;
}

std::vector<core::OwnBand> allOwnBands(Connection& connection) {
    std::vector<core::OwnBand> all;
    for (Query row = connection.query(selectOwnBands); row.step();)
        // The table's CHECKs let no other words in.
        all.push_back({.id = row.id<core::OwnBandId>(0),
                       .stage = core::stageFrom(row.text(1)).value_or(core::Stage::BeforeRoots),
                       .quantity = core::bandQuantityFrom(row.text(2)).value_or(core::BandQuantity::AirTemperature),
                       .plant = row.id<core::PlantId>(3),
                       .low = endIn(row, 4),
                       .high = endIn(row, 5),
                       .note = row.text(6)});
    std::ranges::sort(
        all, {}, [](const core::OwnBand& band) { return std::tuple(band.plant, band.quantity, band.stage, band.id); });
    return all;
}

bool hasOwnBands(Connection& connection, core::PlantId plant) {
    return connection.query(findOwnBandOfPlant, plant).step();
}

}  // namespace db
