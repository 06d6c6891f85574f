// SPDX-License-Identifier: MIT
// Reads a logger's file by its mapping: all of it, or every fault with its row, its column and what is allowed there. Writes nothing.
#pragma once

#include <filesystem>
#include <vector>

#include "app/logger/file_form.h"
#include "app/logger/log_summary.h"
#include "app/logger/logger_zone.h"
#include "core/climate/logger_day.h"
#include "core/climate/logger_mapping.h"
#include "db/exchange/import_folder.h"
#include "db/safekeeping/waiting.h"

namespace logger {

inline constexpr std::size_t mostFaultsListed = 100;

struct LogContents {
    std::vector<core::LoggerDay> days{};  // must not be used where there are faults
    LogSummary summary{};
    std::vector<db::ImportFault> faults{};  // the first 100, in order of row
    std::int64_t moreFaults{};              // how many besides
    bool goesOnceThroughTwiceHour{};  // one of the faults is that the mapping doesn't say which of the two is meant
    std::string winterTime{};         // "UTC+01:00", where rows stand in the hour that is left out in spring
    bool isCalledOff{};
};

/// `mapping` obeys its rules and its zone is known; `now` is what the world's clock says, for no reading is of the future. Throws
/// db::LogbookError where the file can't be read.
[[nodiscard]] LogContents readLog(const std::filesystem::path& file, const FileForm& form,
                                  const core::LoggerMapping& mapping, core::Moment now,
                                  const db::Waiting& waiting = {});

}  // namespace logger
