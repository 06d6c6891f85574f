// SPDX-License-Identifier: MIT
// Rows of the table methods: all SQL about it is here.
#pragma once

#include <vector>

#include "core/station/method.h"
#include "db/connection.h"

namespace db {

void insertRow(Connection& connection, const core::Method& method);
/// False: there is no such row.
[[nodiscard]] bool updateRow(Connection& connection, const core::Method& method);
[[nodiscard]] bool deleteRow(Connection& connection, core::MethodId id);
[[nodiscard]] std::vector<core::Method> allMethods(Connection& connection);
[[nodiscard]] bool hasMethods(Connection& connection, core::CheckScheduleId schedule);

}  // namespace db
