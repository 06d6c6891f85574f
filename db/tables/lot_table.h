// SPDX-License-Identifier: MIT
// Rows of the table lots: all SQL about it is here.
#pragma once

#include <vector>

#include "core/treatment/lot.h"
#include "db/connection.h"

namespace db {

void insertRow(Connection& connection, const core::Lot& lot);
/// False: there is no such row.
[[nodiscard]] bool updateRow(Connection& connection, const core::Lot& lot);
[[nodiscard]] bool deleteRow(Connection& connection, core::LotId id);
/// By first day.
[[nodiscard]] std::vector<core::Lot> allLots(Connection& connection);

}  // namespace db
