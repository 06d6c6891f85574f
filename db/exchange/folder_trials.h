// SPDX-License-Identifier: MIT
// Reads trials.csv, and once batches are known trial_arms.csv, trial_batches.csv and trial_changes.csv; and plans.csv.
#pragma once

#include "db/exchange/folder_batches.h"

namespace db {

/// Trials by name, with all that trials.csv says of them.
void readTrials(const std::filesystem::path& folder, FolderShelves& into, FaultList& faults,
                const std::stop_token& stop);
/// Their arms, what was dealt and what was changed; then asks core's rules of each trial as a whole.
void readTrialParts(const std::filesystem::path& folder, FolderShelves& shelves, const FolderBatches& batches,
                    FaultList& faults, const std::stop_token& stop);
void readPlans(const std::filesystem::path& folder, FolderShelves& shelves, FaultList& faults,
               const std::stop_token& stop);

}  // namespace db
