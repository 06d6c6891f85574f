// SPDX-License-Identifier: MIT
// Rows of the table trial_batches, what chance dealt to the arms of trials: all SQL about it is here.
#pragma once

#include <vector>

#include "core/trial/trial.h"
#include "db/connection.h"

namespace db {

/// In place of what was dealt before.
void replaceDealt(Connection& connection, const core::Trial& trial);
void deleteDealt(Connection& connection, core::TrialId trial);
[[nodiscard]] std::vector<core::TrialBatch> dealtOf(Connection& connection, core::TrialId trial);
/// The batch goes: what it was stuck from can be stuck again.
void releaseDealt(Connection& connection, core::BatchId batch);

// Whether any trial was dealt to it.
[[nodiscard]] bool hasDealt(Connection& connection, core::StationId id);
[[nodiscard]] bool hasDealt(Connection& connection, core::PlantId id);
[[nodiscard]] bool hasDealt(Connection& connection, core::StockPlantId id);

}  // namespace db
