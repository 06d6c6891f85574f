// SPDX-License-Identifier: MIT
// Rows of the table stock_plants: all SQL about it is here.
#pragma once

#include <vector>

#include "core/plants/stock_plant.h"
#include "db/connection.h"

namespace db {

void insertRow(Connection& connection, const core::StockPlant& stockPlant);
/// False: there is no such row.
[[nodiscard]] bool updateRow(Connection& connection, const core::StockPlant& stockPlant);
[[nodiscard]] bool deleteRow(Connection& connection, core::StockPlantId id);
[[nodiscard]] std::vector<core::StockPlant> allStockPlants(Connection& connection);
[[nodiscard]] bool hasStockPlants(Connection& connection, core::PlantId plant);

}  // namespace db
