// SPDX-License-Identifier: MIT
// Reads an exchange folder (docs/exchange_folder.md) into plain records, or lists every fault with its place. Writes nothing.
#pragma once

#include <filesystem>
#include <optional>
#include <stop_token>
#include <string>
#include <vector>

#include "core/records.h"

namespace db {

struct ImportFault {
    std::string file;    // "checks.csv"
    int row{};           // as a spreadsheet counts, the heading is row 1; 0: the file as a whole
    std::string column;  // may be empty
    std::string reason;  // a sentence

    bool operator==(const ImportFault&) const = default;
};

struct FolderContents {
    core::Records records;
    std::vector<int> batchRows;       // of batches.csv, one for each of the batches
    bool hasFacts{};                  // the folder came with logbook.csv: a whole logbook rather than two tables
    std::vector<ImportFault> faults;  // the first 100
    bool moreFaults{};
};

/// All or nothing is the caller's: when there are faults, `records` must not be used.
[[nodiscard]] FolderContents readFolder(const std::filesystem::path& folder, core::Date today,
                                        std::stop_token stop = {});

}  // namespace db
