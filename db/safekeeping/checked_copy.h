// SPDX-License-Identifier: MIT
// A whole copy of an open database: SQLite's backup interface into a temporary file, opened and checked as any logbook, synced, renamed.
#pragma once

#include <filesystem>
#include <span>
#include <string>

#include "db/connection.h"
#include "db/migrations/migration_runner.h"
#include "db/safekeeping/part_file.h"
#include "db/safekeeping/waiting.h"

namespace db {

/// `what` as in "The backup". LogbookError when it fails, false when it was called off; then there is no file.
bool writeCheckedCopy(Connection& from, const std::filesystem::path& to, IfThere ifThere, const std::string& what,
                      const Waiting& waiting = {}, std::span<const Migration> migrations = releasedMigrations());

}  // namespace db
