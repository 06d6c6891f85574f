// SPDX-License-Identifier: MIT
// Rows of the table own_bands: all SQL about it is here.
#pragma once

#include <vector>

#include "core/climate/own_band.h"
#include "db/connection.h"

namespace db {

void insertRow(Connection& connection, const core::OwnBand& band);
/// False: there is no such row.
[[nodiscard]] bool updateRow(Connection& connection, const core::OwnBand& band);
[[nodiscard]] bool deleteRow(Connection& connection, core::OwnBandId id);
/// The general ones first; by plant, quantity and stage.
[[nodiscard]] std::vector<core::OwnBand> allOwnBands(Connection& connection);
[[nodiscard]] bool hasOwnBands(Connection& connection, core::PlantId plant);

}  // namespace db
