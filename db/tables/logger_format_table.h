// SPDX-License-Identifier: MIT
// Rows of the table logger_formats: all SQL about it is here.
#pragma once

#include <vector>

#include "core/climate/logger_format.h"
#include "db/connection.h"

namespace db {

void insertRow(Connection& connection, const core::LoggerFormat& format);
/// False: there is no such row.
[[nodiscard]] bool updateRow(Connection& connection, const core::LoggerFormat& format);
[[nodiscard]] bool deleteRow(Connection& connection, core::LoggerFormatId id);
/// By name.
[[nodiscard]] std::vector<core::LoggerFormat> allLoggerFormats(Connection& connection);

}  // namespace db
