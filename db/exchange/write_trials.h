// SPDX-License-Identifier: MIT
// Writes trials with their arms, what was dealt and what was changed; and plans.
#pragma once

#include "core/records.h"
#include "db/exchange/table_files.h"

namespace db {

void writeTrials(const core::Records& records, const TableFiles& files);

}  // namespace db
