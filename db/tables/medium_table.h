// SPDX-License-Identifier: MIT
// Rows of the tables media and media_components: all SQL about them is here.
#pragma once

#include <vector>

#include "core/medium/medium.h"
#include "db/connection.h"

namespace db {

void insertRow(Connection& connection, const core::Medium& medium);
/// False: there is no such row.
[[nodiscard]] bool updateRow(Connection& connection, const core::Medium& medium);
[[nodiscard]] bool deleteRow(Connection& connection, core::MediumId id);
[[nodiscard]] std::vector<core::Medium> allMedia(Connection& connection);

}  // namespace db
