// SPDX-License-Identifier: MIT
// Writes a whole logbook as plain tables with a datapackage.json. Importing the folder into a new logbook gives the same logbook.
#pragma once

#include <filesystem>

#include "db/logbook.h"
#include "db/safekeeping/waiting.h"

namespace db {

/// Makes `folder` (which may exist if it is empty) or throws LogbookError and leaves nothing behind. False: it was called off, and has left
/// nothing behind either.
bool exportFolder(const Logbook& logbook, const std::filesystem::path& folder, const Waiting& waiting = {});

}  // namespace db
