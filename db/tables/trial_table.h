// SPDX-License-Identifier: MIT
// Rows of the table trials: all SQL about it is here.
#pragma once

#include <vector>

#include "core/trial/trial.h"
#include "db/connection.h"

namespace db {

void insertRow(Connection& connection, const core::Trial& trial);
/// False: there is no such row.
[[nodiscard]] bool updateRow(Connection& connection, const core::Trial& trial);
[[nodiscard]] bool deleteRow(Connection& connection, core::TrialId id);
[[nodiscard]] std::vector<core::Trial> allTrials(Connection& connection);

}  // namespace db
