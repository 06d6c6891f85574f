// SPDX-License-Identifier: MIT
// Rows of the table prices: all SQL about it is here.
#pragma once

#include <vector>

#include "core/money/price.h"
#include "db/connection.h"

namespace db {

void insertRow(Connection& connection, const core::Price& price);
/// False: there is no such row.
[[nodiscard]] bool updateRow(Connection& connection, const core::Price& price);
[[nodiscard]] bool deleteRow(Connection& connection, core::PriceId id);
/// By kind, name and first day.
[[nodiscard]] std::vector<core::Price> allPrices(Connection& connection);

}  // namespace db
