// SPDX-License-Identifier: MIT
// Reads prices.csv, lots.csv, pottings.csv and expenses.csv, and asks core's rules of each row.
#pragma once

#include "db/exchange/folder_batches.h"

namespace db {

/// Into records.pottings and expenses; prices and lots onto the shelves.
void readMoney(const std::filesystem::path& folder, FolderShelves& shelves, const FolderBatches& batches,
               core::Date today, core::Records& records, FaultList& faults, const std::stop_token& stop);

}  // namespace db
