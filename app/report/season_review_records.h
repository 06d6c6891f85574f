// SPDX-License-Identifier: MIT
// What a season review rests on, read from a logbook in one go: long work with many batches, for a thread of its own in the window.
#pragma once

#include <vector>

#include "core/review/season_review.h"

namespace db {
class Logbook;
}

namespace report {

struct SeasonRecords {
    core::Shelves shelves{};
    std::vector<core::BatchRecord> batches{};
    std::vector<core::Session> sessions{};
    std::vector<core::Care> care{};
    std::vector<core::Expense> expenses{};
    std::vector<core::Potting> pottings{};
    core::Date today{};

    /// It must not outlive this.
    [[nodiscard]] core::ReviewRecords view() const;
};

[[nodiscard]] SeasonRecords seasonRecordsOf(const db::Logbook& logbook, core::Date today);

}  // namespace report
