// SPDX-License-Identifier: MIT
// Opens a file that may come from anywhere: what kind of file it is is read before SQLite gets it, and only a sound logbook of a schema that
// we know is let through. Whatever is wrong is said in one sentence, and the file stays as it was.
#pragma once

#include <chrono>
#include <filesystem>
#include <memory>
#include <span>
#include <stop_token>

#include "db/connection.h"
#include "db/migrations/migration_runner.h"

namespace db {

struct OpenedFile {
    std::unique_ptr<Connection> connection;
    int schemaVersion{};  // as found; older than the newest migration where the file still has to be migrated
};

/// Reads the first bytes: an ordinary file, of SQLite's format, ours, of a version that we know, of its full length. LogbookError otherwise.
void requireLogbookHeader(const std::filesystem::path& file, std::span<const Migration> migrations);

/// Everything: header, exact schema, quick check. Writes nothing but what SQLite must roll back after a crash. A stop request breaks the
/// check off with a LogbookError.
[[nodiscard]] OpenedFile openUntrusted(const std::filesystem::path& file, bool readOnly,
                                       std::chrono::milliseconds patience,
                                       std::span<const Migration> migrations = releasedMigrations(),
                                       const std::stop_token& stop = {});

/// Why the file or its folder can't be written to, in a sentence; empty when both can. A file that is marked read-only counts, also for root.
[[nodiscard]] std::string whyNotWritable(const std::filesystem::path& file);

}  // namespace db
