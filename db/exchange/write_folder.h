// SPDX-License-Identifier: MIT
// Writes records as the tables of an exchange folder, into a folder that is there and empty.
#pragma once

#include <filesystem>

#include "core/records.h"
#include "db/safekeeping/waiting.h"

namespace db {

/// Throws LogbookError when the disk fails, and ends early when it is called off; what is written by then stays. Syncs nothing: that is the
/// caller's.
void writeFolder(const core::Records& records, const std::filesystem::path& folder, const Waiting& waiting = {});

}  // namespace db
