// SPDX-License-Identifier: MIT
// Rows of the table readings: all SQL about it is here.
#pragma once

#include <optional>
#include <vector>

#include "core/climate/reading.h"
#include "db/connection.h"

namespace db {

void insertRow(Connection& connection, const core::Reading& reading);
/// False: there is no such row.
[[nodiscard]] bool updateRow(Connection& connection, const core::Reading& reading);
[[nodiscard]] bool deleteRow(Connection& connection, core::ReadingId id);
[[nodiscard]] std::optional<core::Reading> readingIn(Connection& connection, core::ReadingId id);
[[nodiscard]] std::vector<core::Reading> allReadings(Connection& connection);
/// In order of time, the ends included.
[[nodiscard]] std::vector<core::Reading> readingsOf(Connection& connection, core::StationId station, core::Moment from,
                                                    core::Moment until);
/// Of each station and quantity the newest.
[[nodiscard]] std::vector<core::Reading> newestReadings(Connection& connection);
[[nodiscard]] bool hasReadings(Connection& connection, core::StationId station);

}  // namespace db
