// SPDX-License-Identifier: MIT
// Copies of a logbook that are whole: made with SQLite's backup interface to a temporary name, checked, synced, renamed. And the way back.
#pragma once

#include <filesystem>
#include <vector>

#include "db/logbook.h"
#include "db/safekeeping/waiting.h"

namespace db {

/// Writes a checked copy to `to`; LogbookError when `to` exists already or the disk is full, false when it was called off; nothing half-made
/// is left behind.
bool backUp(const Logbook& logbook, const std::filesystem::path& to, const Waiting& waiting = {});

constexpr int backupsKept = 10;

struct BackupFile {
    std::filesystem::path file;
    std::string madeAt;  // "2026-03-14T10:42:05Z"
};

/// The folder beside the logbook that automatic backups go to: "NAME backups".
[[nodiscard]] std::filesystem::path backupFolder(const std::filesystem::path& logbook);
/// One automatic copy when the newest is from an earlier day (or `always`), keeping the `keep` newest. Returns the new file, or an empty path.
std::filesystem::path backUpAutomatically(const Logbook& logbook, bool always = false, int keep = backupsKept,
                                          const Waiting& waiting = {});
/// Newest first.
[[nodiscard]] std::vector<BackupFile> backupsOf(const std::filesystem::path& logbook);
/// Puts a backup in the logbook's place, after checking it and after backing up what is there. No open Logbook may hold the file. False when
/// it was called off: then everything is as it was.
bool restore(const std::filesystem::path& backup, const std::filesystem::path& logbook, const Clock& clock,
             const Waiting& waiting = {});

}  // namespace db
