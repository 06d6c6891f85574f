// SPDX-License-Identifier: MIT
// Writes records as the tables of an exchange folder, into a folder that is there and empty.
#pragma once

#include <filesystem>

#include "core/records.h"

namespace db {

/// Throws LogbookError when the disk fails; what is written by then stays. Syncs nothing: that is the caller's.
void writeFolder(const core::Records& records, const std::filesystem::path& folder);

}  // namespace db
