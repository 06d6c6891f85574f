// SPDX-License-Identifier: MIT
// Rows of the table check_schedules: all SQL about it is here.
#pragma once

#include <vector>

#include "core/due/check_schedule.h"
#include "db/connection.h"

namespace db {

void insertRow(Connection& connection, const core::CheckSchedule& schedule);
/// False: there is no such row.
[[nodiscard]] bool updateRow(Connection& connection, const core::CheckSchedule& schedule);
[[nodiscard]] bool deleteRow(Connection& connection, core::CheckScheduleId id);
[[nodiscard]] std::vector<core::CheckSchedule> allCheckSchedules(Connection& connection);

}  // namespace db
