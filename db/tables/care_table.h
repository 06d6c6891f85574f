// SPDX-License-Identifier: MIT
// Rows of the table care: all SQL about it is here.
#pragma once

#include <optional>
#include <vector>

#include "core/care/care.h"
#include "db/connection.h"

namespace db {

void insertRow(Connection& connection, const core::Care& care);
/// False: there is no such row.
[[nodiscard]] bool updateRow(Connection& connection, const core::Care& care);
[[nodiscard]] bool deleteRow(Connection& connection, core::CareId id);
[[nodiscard]] std::optional<core::Care> careIn(Connection& connection, core::CareId id);
[[nodiscard]] std::vector<core::Care> allCare(Connection& connection);
/// In order of time, the ends included.
[[nodiscard]] std::vector<core::Care> careOf(Connection& connection, core::StationId station, core::Moment from,
                                             core::Moment until);
[[nodiscard]] bool hasCare(Connection& connection, core::StationId station);

}  // namespace db
