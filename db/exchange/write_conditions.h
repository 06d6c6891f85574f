// SPDX-License-Identifier: MIT
// Writes care, mixes, the grower's own bands, and what loggers recorded with how their files are read.
#pragma once

#include <cstdint>
#include <string>
#include <unordered_map>

#include "core/records.h"
#include "db/exchange/table_files.h"

namespace db {

/// By the session's id, as sessions.csv has them.
using SessionLabels = std::unordered_map<std::int64_t, std::string>;

void writeConditions(const core::Records& records, const SessionLabels& sessions, const TableFiles& files);

}  // namespace db
