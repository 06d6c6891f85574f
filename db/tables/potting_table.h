// SPDX-License-Identifier: MIT
// Rows of the table pottings: all SQL about it is here.
#pragma once

#include <optional>
#include <vector>

#include "core/batch/potting.h"
#include "db/connection.h"

namespace db {

void insertRow(Connection& connection, const core::Potting& potting);
/// False: there is no such row.
[[nodiscard]] bool updateRow(Connection& connection, const core::Potting& potting);
[[nodiscard]] bool deleteRow(Connection& connection, core::PottingId id);
void deletePottingsOf(Connection& connection, core::BatchId batch);
[[nodiscard]] std::optional<core::Potting> pottingIn(Connection& connection, core::PottingId id);
// In order of day.
[[nodiscard]] std::vector<core::Potting> pottingsOf(Connection& connection, core::BatchId batch);
[[nodiscard]] std::vector<core::Potting> allPottings(Connection& connection);

}  // namespace db
