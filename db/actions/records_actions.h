// SPDX-License-Identifier: MIT
// Brings a whole set of records into a logbook in one step of history: imports and the demo.
#pragma once

#include <stop_token>
#include <string>

#include "core/result.h"
#include "db/logbook.h"

namespace db {

/// Adds sessions, batches and checks of `records` with all that belongs to them, and of its shelves what the logbook doesn't have by name (what it has is used and left as
/// it is). Refuses codes that are taken, and batches that would stand where they can't. `records` must obey core's rules; whoever read them has checked that. With `withFacts` the
/// logbook's facts become those of `records`, and in a logbook without sessions the shelves do too: what it started with makes way.
[[nodiscard]] core::Result<Changes> addRecords(Logbook& logbook, core::Records records, const std::string& words,
                                               bool withFacts = false, std::stop_token stop = {});

}  // namespace db
