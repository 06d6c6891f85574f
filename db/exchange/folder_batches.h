// SPDX-License-Identifier: MIT
// Reads sessions.csv, batches.csv, checks.csv and findings.csv of an exchange folder, with the shelves already read, and asks core's rules of each row.
#pragma once

#include <filesystem>
#include <map>
#include <set>
#include <stop_token>
#include <string>
#include <unordered_map>
#include <vector>

#include "core/records.h"
#include "db/exchange/fault_list.h"
#include "db/exchange/folder_shelves.h"

namespace db {

/// A code that batches.csv has.
struct ReadBatch {
    std::size_t place{};  // in FolderBatches::batches, where it is sound
    int row{};
    bool isSound{};  // else nothing is said of its checks: they may well be right
};

struct FolderBatches {
    std::vector<core::Session> sessions;
    std::vector<core::BatchRecord> batches;
    std::vector<int> rows;  // that they came from
    std::unordered_map<std::string, ReadBatch> codes;
    std::map<std::string, std::size_t> sessionOfLabel;  // of sessions.csv; or the day, where a row names no session
    bool hasSessionTable{};
    std::map<std::string, int> rowOfTreatment;  // the first that gave its auxins, where no table of treatments does
    std::set<std::string> blamedTreatments;     // each contradiction is named once, not in every row that shares it
    bool hasBatchTable{};                       // it could be read
};

void readSessions(const std::filesystem::path& folder, FolderBatches& into, core::Date today, FaultList& faults,
                  const std::stop_token& stop);
void readBatches(const std::filesystem::path& folder, FolderShelves& shelves, FolderBatches& into, core::Date today,
                 FaultList& faults, const std::stop_token& stop);
void readChecks(const std::filesystem::path& folder, FolderShelves& shelves, FolderBatches& into, core::Date today,
                FaultList& faults, const std::stop_token& stop);
/// Of checks that have been read.
void readFindings(const std::filesystem::path& folder, const FolderShelves& shelves, FolderBatches& into,
                  FaultList& faults, const std::stop_token& stop);
/// Where batches stand, once all that their checks found is known.
void judgePositions(const FolderShelves& shelves, const FolderBatches& read, FaultList& faults);

}  // namespace db
