// SPDX-License-Identifier: MIT
// Writes prices, lots, counts after potting and expenses.
#pragma once

#include "db/exchange/write_conditions.h"

namespace db {

void writeMoney(const core::Records& records, const SessionLabels& sessions, const TableFiles& files);

}  // namespace db
