// SPDX-License-Identifier: MIT
// Batches of a day's cutting work, for commands that are told the day.
#pragma once

#include <string>
#include <vector>

#include "db/logbook.h"

namespace console {

/// By code.
[[nodiscard]] std::vector<core::Batch> batchesStuckOn(core::Date day, const db::Logbook& logbook);
/// "Nothing was stuck on 14 March 2026 in LOG."
[[nodiscard]] std::string nothingStuckText(core::Date day, const std::string& file);

}  // namespace console
