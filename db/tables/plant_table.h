// SPDX-License-Identifier: MIT
// Rows of the table plants: all SQL about it is here.
#pragma once

#include <vector>

#include "core/plants/plant.h"
#include "db/connection.h"

namespace db {

void insertRow(Connection& connection, const core::Plant& plant);
/// False: there is no such row.
[[nodiscard]] bool updateRow(Connection& connection, const core::Plant& plant);
[[nodiscard]] bool deleteRow(Connection& connection, core::PlantId id);
[[nodiscard]] std::vector<core::Plant> allPlants(Connection& connection);
[[nodiscard]] bool hasPlants(Connection& connection, core::CheckScheduleId schedule);

}  // namespace db
