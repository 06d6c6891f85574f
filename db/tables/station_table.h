// SPDX-License-Identifier: MIT
// Rows of the table stations: all SQL about it is here.
#pragma once

#include <vector>

#include "core/station/station.h"
#include "db/connection.h"

namespace db {

void insertRow(Connection& connection, const core::Station& station);
/// False: there is no such row.
[[nodiscard]] bool updateRow(Connection& connection, const core::Station& station);
[[nodiscard]] bool deleteRow(Connection& connection, core::StationId id);
[[nodiscard]] std::vector<core::Station> allStations(Connection& connection);
[[nodiscard]] bool hasStations(Connection& connection, core::MethodId method);

}  // namespace db
