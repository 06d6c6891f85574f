// SPDX-License-Identifier: MIT
// The one row of logbook.csv.
#pragma once

#include "core/records.h"
#include "db/exchange/table_reader.h"

namespace db {

/// What the row leaves out is as in a new logbook.
[[nodiscard]] core::LogbookFacts factsIn(TableRow& row);

}  // namespace db
