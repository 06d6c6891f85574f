// SPDX-License-Identifier: MIT
// Rows of the table cutting_kinds: all SQL about it is here.
#pragma once

#include <vector>

#include "core/batch/cutting_kind.h"
#include "db/connection.h"

namespace db {

void insertRow(Connection& connection, const core::CuttingKind& cuttingKind);
/// False: there is no such row.
[[nodiscard]] bool updateRow(Connection& connection, const core::CuttingKind& cuttingKind);
[[nodiscard]] bool deleteRow(Connection& connection, core::CuttingKindId id);
[[nodiscard]] std::vector<core::CuttingKind> allCuttingKinds(Connection& connection);

}  // namespace db
