// SPDX-License-Identifier: MIT
// Does the history lead to what stands in the tables? A copy in memory is taken back step by step; a row that isn't as the history left it
// was changed by something else.
#pragma once

#include <string>
#include <vector>

#include "db/connection.h"

namespace db {

/// Sentences; empty: every figure is accounted for, as far back as no migration has sealed the history. Domain: changesets are sound.
[[nodiscard]] std::vector<std::string> auditFaults(Connection& connection, int schemaVersion);

}  // namespace db
