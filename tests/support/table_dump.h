// SPDX-License-Identifier: MIT
// A logbook file as text, for comparing: every row of every table but history, in order of its key. And the ways to tamper with a file that
// only a test may have.
#pragma once

#include <filesystem>
#include <string>

namespace support {

[[nodiscard]] std::string tableDump(const std::filesystem::path& file);
/// Runs statements on the file as any other program could.
void runSql(const std::filesystem::path& file, const std::string& statements);
/// The first value of the first row as text.
[[nodiscard]] std::string valueOf(const std::filesystem::path& file, const std::string& query);

}  // namespace support
