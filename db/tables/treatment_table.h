// SPDX-License-Identifier: MIT
// Rows of the tables treatments and treatment_auxins: all SQL about them is here.
#pragma once

#include <vector>

#include "core/treatment/treatment.h"
#include "db/connection.h"

namespace db {

void insertRow(Connection& connection, const core::Treatment& treatment);
/// False: there is no such row.
[[nodiscard]] bool updateRow(Connection& connection, const core::Treatment& treatment);
[[nodiscard]] bool deleteRow(Connection& connection, core::TreatmentId id);
[[nodiscard]] std::vector<core::Treatment> allTreatments(Connection& connection);

}  // namespace db
