// SPDX-License-Identifier: MIT
// Looks through a whole logbook: the file's own integrity, foreign keys, every rule of core over every batch, every changeset
// readable, and every figure one that the history leads to.
#pragma once

#include <string>
#include <vector>

#include "db/logbook.h"

namespace db {

struct Verification {
    int batches{};
    int checks{};
    int historyEntries{};
    std::vector<std::string> faults;  // sentences; empty: content
};

[[nodiscard]] Verification verify(const Logbook& logbook, core::Date today);

}  // namespace db
