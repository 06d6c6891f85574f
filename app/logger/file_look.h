// SPDX-License-Identifier: MIT
// A first look at a logger's file: its layout, its first rows, and what its columns are likely to be.
#pragma once

#include <functional>
#include <stop_token>

#include "app/logger/file_form.h"
#include "core/climate/logger_mapping.h"
#include "core/records.h"
#include "db/safekeeping/waiting.h"

namespace logger {

struct FileLook {
    FileTop top{};
    core::LoggerMapping guess{};  // in the zone of this computer
    std::string fault{};          // a sentence where it is no table of a logger

    [[nodiscard]] bool isTable() const { return fault.empty(); }
};

/// Throws db::LogbookError where the file can't be read. What was called off must not be used.
[[nodiscard]] FileLook lookAt(const std::filesystem::path& file, const core::Shelves& shelves,
                              const db::Waiting& waiting = {});

/// What the column with the day says of its order, as far as the whole file settles it, or that it has seconds since 1970. `mapping` says which
/// column that is.
[[nodiscard]] core::TimeForm timeFormIn(const std::filesystem::path& file, const FileForm& form,
                                        const core::LoggerMapping& mapping, const db::Waiting& waiting = {});

}  // namespace logger
