// SPDX-License-Identifier: MIT
// The one row of the table facts: what the logbook says of itself. All SQL about it is here.
#pragma once

#include "core/records.h"
#include "db/connection.h"

namespace db {

void insertRow(Connection& connection, const core::LogbookFacts& facts);
[[nodiscard]] bool updateRow(Connection& connection, const core::LogbookFacts& facts);
/// LogbookError when the row is missing.
[[nodiscard]] core::LogbookFacts factsOf(Connection& connection);

}  // namespace db
