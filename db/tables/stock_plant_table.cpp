// SPDX-License-Identifier: MIT
#include "db/tables/stock_plant_table.h"

namespace db {

namespace {

constexpr const char* insertStockPlant = R"(
    INSERT INTO stock_plants (id, plant_id, label, note, is_retired)
    VALUES (?1, ?2, ?3, ?4, ?5))";
constexpr const char* updateStockPlant = R"(
    UPDATE stock_plants SET plant_id = ?2, label = ?3, note = ?4, is_retired = ?5
    WHERE id = ?1)";
constexpr const char* deleteStockPlant = "DELETE FROM stock_plants WHERE id = ?1";
constexpr const char* selectStockPlants = R"(
    SELECT id, plant_id, label, note, is_retired
    FROM stock_plants ORDER BY label COLLATE NOCASE, id)";
constexpr const char* findStockPlant = "SELECT id FROM stock_plants WHERE plant_id = ?1 LIMIT 1";

core::StockPlant stockPlantFrom(const Query& row) {
    return {.id = row.id<core::StockPlantId>(0),
            .plant = row.id<core::PlantId>(1),
            .label = row.text(2),
            .note = row.text(3),
            .isRetired = row.truth(4)};
}

int runStockPlant(Connection& connection, const char* sql, const core::StockPlant& stockPlant) {
    return connection.run(sql, stockPlant.id, stockPlant.plant, stockPlant.label, stockPlant.note,
                          stockPlant.isRetired);
}

}  // namespace

void insertRow(Connection& connection, const core::StockPlant& stockPlant) {
    runStockPlant(connection, insertStockPlant, stockPlant);
}

bool updateRow(Connection& connection, const core::StockPlant& stockPlant) {
    return runStockPlant(connection, updateStockPlant, stockPlant) == 1;
}

bool deleteRow(Connection& connection, core::StockPlantId id) {
    return connection.run(deleteStockPlant, id) == 1;
}

std::vector<core::StockPlant> allStockPlants(Connection& connection) {
    std::vector<core::StockPlant> all;
    for (Query row = connection.query(selectStockPlants); row.step();) all.push_back(stockPlantFrom(row));
    return all;
}

bool hasStockPlants(Connection& connection, core::PlantId plant) {
    return connection.query(findStockPlant, plant).step();
}

}  // namespace db
