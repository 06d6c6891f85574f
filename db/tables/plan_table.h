// SPDX-License-Identifier: MIT
// Rows of the table plans: all SQL about it is here.
#pragma once

#include <vector>

#include "core/planning/plan.h"
#include "db/connection.h"

namespace db {

void insertRow(Connection& connection, const core::Plan& plan);
/// False: there is no such row.
[[nodiscard]] bool updateRow(Connection& connection, const core::Plan& plan);
[[nodiscard]] bool deleteRow(Connection& connection, core::PlanId id);
/// The soonest needed first, those without a day last.
[[nodiscard]] std::vector<core::Plan> allPlans(Connection& connection);

// Whether any plan uses it.
[[nodiscard]] bool hasPlans(Connection& connection, core::PlantId id);
[[nodiscard]] bool hasPlans(Connection& connection, core::MethodId id);

}  // namespace db
