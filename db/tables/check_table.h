// SPDX-License-Identifier: MIT
// Rows of the tables checks, check_losses and check_findings: all SQL about them is here.
#pragma once

#include <optional>
#include <unordered_map>
#include <vector>

#include "core/batch/check.h"
#include "core/batch/loss_cause.h"
#include "db/connection.h"

namespace db {

void insertRow(Connection& connection, const core::Check& check);
/// False: there is no such row.
[[nodiscard]] bool updateRow(Connection& connection, const core::Check& check);
[[nodiscard]] bool deleteRow(Connection& connection, core::CheckId id);
void deleteChecksOf(Connection& connection, core::BatchId batch);

/// In order of date.
[[nodiscard]] std::vector<core::Check> checksOf(Connection& connection, core::BatchId batch);
/// The same of every batch that has any, in one walk over the file.
[[nodiscard]] std::unordered_map<core::BatchId, std::vector<core::Check>> checksByBatch(Connection& connection);
/// The batch that a check is of; unset when there is no such check.
[[nodiscard]] core::BatchId batchOfCheck(Connection& connection, core::CheckId check);
/// The batches whose checks name this cause.
[[nodiscard]] std::vector<core::BatchId> batchesWithLosses(Connection& connection, core::LossCauseId cause);
/// By cause.
[[nodiscard]] std::vector<core::LossCauseUse> usesOfLossCauses(Connection& connection);
/// Whether any batch of the trial has been looked at.
[[nodiscard]] bool hasChecks(Connection& connection, core::TrialId trial);
[[nodiscard]] bool hasLosses(Connection& connection, core::LossCauseId cause);

}  // namespace db
