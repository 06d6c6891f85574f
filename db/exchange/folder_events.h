// SPDX-License-Identifier: MIT
// Reads readings.csv and photos.csv with the pictures that it names, and asks core's rules of each row.
#pragma once

#include "db/exchange/folder_batches.h"

namespace db {

/// Into records.readings and photos; `records` has the shelves and batches.
void readEvents(const std::filesystem::path& folder, const FolderShelves& shelves, const FolderBatches& batches,
                core::Date today, core::Records& records, FaultList& faults, const std::stop_token& stop);

// Cells that several tables have. What is wrong with them becomes a fault of the row.
[[nodiscard]] core::StationId stationIn(TableRow& row, const FolderShelves& shelves);
[[nodiscard]] core::Quantity quantityIn(TableRow& row);
/// Unset where the cell is empty.
[[nodiscard]] core::SessionId sessionIn(TableRow& row, const FolderBatches& batches);
/// Nothing where there is none; of a faulty one nothing more is said.
[[nodiscard]] const core::BatchRecord* recordIn(TableRow& row, const FolderBatches& batches);

}  // namespace db
