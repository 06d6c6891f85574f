// SPDX-License-Identifier: MIT
// What loggers recorded, brought in and taken out, and how their files are read. See session_actions.h for the manner.
#pragma once

#include <cstdint>
#include <functional>
#include <span>
#include <stop_token>
#include <string>

#include "core/result.h"
#include "db/logbook.h"

namespace db {

struct LoggerAdded {
    Changes changes{};  // without a number where nothing was new: then nothing was written
    std::int64_t added{};
    std::int64_t known{};      // the same value of the same moment was there
    std::int64_t differing{};  // another value of the same moment was there, and stays
};

/// How many of how many days are done.
using LoggerProgress = std::function<void(std::size_t, std::size_t)>;

/// All of the days or none, put together with what is there. A day may come more than once. Refused with a sentence also where
/// `stop` was requested before the end. `remembered`, a format that is new, is kept in the same step.
[[nodiscard]] core::Result<LoggerAdded> addLoggerDays(Logbook& logbook, std::span<const core::LoggerDay> days,
                                                      const std::string& words, core::Moment now,
                                                      const std::stop_token& stop = {},
                                                      const LoggerProgress& progress = {},
                                                      const core::LoggerFormat* remembered = nullptr);
/// Whole days (UTC), the ends included; without any, nothing is written.
[[nodiscard]] core::Result<Changes> removeLoggerDays(Logbook& logbook, core::StationId station, core::Quantity quantity,
                                                     core::Date from, core::Date until);

/// Adds when the id is unset, else changes.
[[nodiscard]] core::Result<Changes> keep(Logbook& logbook, const core::LoggerFormat& format);
[[nodiscard]] core::Result<Changes> remove(Logbook& logbook, core::LoggerFormatId id);

}  // namespace db
