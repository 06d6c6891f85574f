// SPDX-License-Identifier: MIT
// Rows of the table sessions: all SQL about it is here.
#pragma once

#include <vector>

#include "core/batch/session.h"
#include "db/connection.h"

namespace db {

void insertRow(Connection& connection, const core::Session& session);
/// False: there is no such row.
[[nodiscard]] bool updateRow(Connection& connection, const core::Session& session);
[[nodiscard]] bool deleteRow(Connection& connection, core::SessionId id);
[[nodiscard]] std::vector<core::Session> allSessions(Connection& connection);

}  // namespace db
