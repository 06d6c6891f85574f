// SPDX-License-Identifier: MIT
// What one visit to a station found and did, written in one step of history. See session_actions.h for the manner.
#pragma once

#include <vector>

#include "core/result.h"
#include "db/logbook.h"

namespace db {

struct StationVisit {
    core::StationId station{};
    std::vector<core::Reading> readings{};  // ids unset: new; else changed
    std::vector<core::Care> care{};         // ids unset: new; else changed
    std::vector<core::Reading> gone{};      // deleted
};

/// All of it or nothing. A refusal's field is the quantity's name, or the care's.
[[nodiscard]] core::Result<Changes> keepVisit(Logbook& logbook, const StationVisit& visit, core::Moment now);

}  // namespace db
