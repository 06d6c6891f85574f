// SPDX-License-Identifier: MIT
// Rows of the table loss_causes: all SQL about it is here. Causes stay in the order in which they were made.
#pragma once

#include <vector>

#include "core/batch/loss_cause.h"
#include "db/connection.h"

namespace db {

void insertRow(Connection& connection, const core::LossCause& cause);
/// False: there is no such row.
[[nodiscard]] bool updateRow(Connection& connection, const core::LossCause& cause);
[[nodiscard]] bool deleteRow(Connection& connection, core::LossCauseId id);
[[nodiscard]] std::vector<core::LossCause> allLossCauses(Connection& connection);

}  // namespace db
