// SPDX-License-Identifier: MIT
// Reads care.csv, mixes.csv, own_bands.csv, logger.csv and logger_formats.csv, and asks core's rules of each row.
#pragma once

#include "db/exchange/folder_batches.h"

namespace db {

/// Into records.care, mixes, loggerDays and loggerFormats; the bands onto the shelves.
void readConditions(const std::filesystem::path& folder, FolderShelves& shelves, const FolderBatches& batches,
                    core::Date today, core::Records& records, FaultList& faults, const std::stop_token& stop);

/// logger.csv alone, of which there may be millions of rows: days in order of station, quantity and day.
[[nodiscard]] std::vector<core::LoggerDay> readLogger(const std::filesystem::path& folder, const FolderShelves& shelves,
                                                      core::Moment now, FaultList& faults, const std::stop_token& stop);

}  // namespace db
