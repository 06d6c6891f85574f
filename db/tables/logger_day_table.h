// SPDX-License-Identifier: MIT
// Rows of the table logger_days: all SQL about it is here. A row whose samples can't be those of a day is a LogbookError.
#pragma once

#include <functional>
#include <string>
#include <vector>

#include "core/climate/logger_day.h"
#include "core/climate/over_time.h"
#include "core/climate/reading.h"
#include "db/connection.h"

namespace db {

/// In place of what that day had.
void putRow(Connection& connection, const core::LoggerDay& day);
/// False: there is no such row.
[[nodiscard]] bool deleteLoggerDay(Connection& connection, core::StationId station, core::Quantity quantity,
                                   core::Date day);
/// Empty: nothing was recorded.
[[nodiscard]] std::vector<core::Sample> samplesOf(Connection& connection, core::StationId station,
                                                  core::Quantity quantity, core::Date day);
/// By station, quantity and day; one at a time, so that no more than a day stands in memory.
void forEachLoggerDay(Connection& connection, const std::function<void(core::LoggerDay)>& visit);
/// Of one station, with all their quantities.
[[nodiscard]] std::vector<core::LoggerDay> loggerDaysOf(Connection& connection, core::StationId station);
/// The days that have rows, the ends included.
[[nodiscard]] std::vector<core::Date> loggedDays(Connection& connection, core::StationId station,
                                                 core::Quantity quantity, core::Date from, core::Date until);
/// In order of time, the ends included.
[[nodiscard]] std::vector<core::TimedValue> loggerValuesOf(Connection& connection, core::StationId station,
                                                           core::Quantity quantity, core::Moment from,
                                                           core::Moment until);
[[nodiscard]] std::vector<core::LoggerSpan> allLoggerSpans(Connection& connection);
/// Of each station and quantity the last value of the last day, as a reading without an id.
[[nodiscard]] std::vector<core::Reading> newestLoggerValuesIn(Connection& connection);
[[nodiscard]] bool hasLoggerDays(Connection& connection, core::StationId station);

/// What is wrong with rows whose samples can't be those of a day, a sentence each.
[[nodiscard]] std::vector<std::string> faultsInLoggerDays(Connection& connection);

}  // namespace db
