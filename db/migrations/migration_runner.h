// SPDX-License-Identifier: MIT
// Brings a logbook from an older schema to this program's. Migrations are numbered, go forward only, and each is one transaction; a
// released one is never edited. A new one is a file NNNN_what_it_does.sql in this folder and a line in db/CMakeLists.txt.
#pragma once

#include <span>
#include <string>
#include <vector>

#include "db/connection.h"

namespace db {

/// "Strk": tells our files from any other SQLite file; at byte 68.
inline constexpr int applicationId = 0x5374726B;

struct Migration {
    int version{};     // the schema version that it leads to; they count up from 1
    const char* name;  // of its file
    const char* sql;
};

[[nodiscard]] std::span<const Migration> releasedMigrations();
/// The version that this program writes.
[[nodiscard]] int newestVersion(std::span<const Migration> migrations);
[[nodiscard]] int schemaVersionOf(Connection& connection);

/// Runs those that the file has not had yet. What a failing one did is taken back, those before it stay. The caller has backed up the file.
void migrate(Connection& connection, std::span<const Migration> migrations);

/// Type, name, table and text of everything in the schema, in order of name: two schemas are the same when these are.
[[nodiscard]] std::vector<std::string> schemaOf(Connection& connection);
/// The schema that a new file of this version has.
[[nodiscard]] std::vector<std::string> expectedSchema(std::span<const Migration> migrations, int version);

}  // namespace db
