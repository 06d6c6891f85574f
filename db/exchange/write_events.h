// SPDX-License-Identifier: MIT
// Writes what happened beside checks: findings by position, readings, and photos with their pictures.
#pragma once

#include "core/records.h"
#include "db/exchange/table_files.h"

namespace db {

void writeEvents(const core::Records& records, const TableFiles& files);

}  // namespace db
