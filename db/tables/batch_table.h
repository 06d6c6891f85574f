// SPDX-License-Identifier: MIT
// Rows of the table batches: all SQL about it is here. A batch's day is its session's. Its checks are in check_table.h.
#pragma once

#include <functional>
#include <optional>
#include <string>
#include <vector>

#include "core/records.h"
#include "db/connection.h"

namespace db {

void insertRow(Connection& connection, const core::Batch& batch);
/// False: there is no such row.
[[nodiscard]] bool updateRow(Connection& connection, const core::Batch& batch);
[[nodiscard]] bool deleteRow(Connection& connection, core::BatchId id);

[[nodiscard]] std::optional<core::Batch> batchIn(Connection& connection, core::BatchId id);
[[nodiscard]] core::BatchId batchCoded(Connection& connection, const std::string& code);
/// In order of day, then code; one at a time, so that a large logbook needn't stand in memory twice.
void forEachBatch(Connection& connection, const std::function<void(core::Batch)>& visit);
void forEachBatchOf(Connection& connection, core::PlantId plant, const std::function<void(core::Batch)>& visit);
[[nodiscard]] std::vector<core::Batch> batchesAt(Connection& connection, core::StationId station);
/// Those with positions that are open.
[[nodiscard]] std::vector<core::Batch> batchesStandingAt(Connection& connection, core::StationId station);
[[nodiscard]] std::vector<core::BatchId> batchesOf(Connection& connection, core::SessionId session);
/// With their counts; the sums are the database's, and equal to core::tallyOf().
[[nodiscard]] std::vector<core::BatchLine> allBatchLines(Connection& connection);
[[nodiscard]] std::optional<core::BatchLine> batchLineIn(Connection& connection, core::BatchId id);
/// The codes that begin with `start`, highest first.
void forEachCode(Connection& connection, const std::string& start,
                 const std::function<bool(const std::string&)>& goesOn);

// Whether any batch uses it.
[[nodiscard]] bool hasBatches(Connection& connection, core::SessionId id);
[[nodiscard]] bool hasBatches(Connection& connection, core::PlantId id);
[[nodiscard]] bool hasBatches(Connection& connection, core::StockPlantId id);
[[nodiscard]] bool hasBatches(Connection& connection, core::MethodId id);
[[nodiscard]] bool hasBatches(Connection& connection, core::StationId id);
[[nodiscard]] bool hasBatches(Connection& connection, core::MediumId id);
[[nodiscard]] bool hasBatches(Connection& connection, core::TreatmentId id);
[[nodiscard]] bool hasBatches(Connection& connection, core::CuttingKindId id);
[[nodiscard]] bool hasBatches(Connection& connection, core::TrialId id);

}  // namespace db
