// SPDX-License-Identifier: MIT
// Rows of the tables trials, trial_arms and trial_changes: all SQL about them is here. What was dealt is in trial_batch_table.h.
#pragma once

#include <vector>

#include "core/trial/trial.h"
#include "db/connection.h"

namespace db {

// With all that hangs on the trial.
void insertRow(Connection& connection, const core::Trial& trial);
/// False: there is no such row.
[[nodiscard]] bool updateRow(Connection& connection, const core::Trial& trial);
[[nodiscard]] bool deleteRow(Connection& connection, core::TrialId id);
[[nodiscard]] std::vector<core::Trial> allTrials(Connection& connection);

// Whether it is an arm of any trial.
[[nodiscard]] bool hasArms(Connection& connection, core::MethodId id);
[[nodiscard]] bool hasArms(Connection& connection, core::TreatmentId id);
[[nodiscard]] bool hasArms(Connection& connection, core::MediumId id);
[[nodiscard]] bool hasArms(Connection& connection, core::CuttingKindId id);

}  // namespace db
