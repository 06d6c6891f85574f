// SPDX-License-Identifier: MIT
// Fills an empty database as a new logbook: schema, facts, starting shelves. This is no step of history: nobody wants to undo it.
#pragma once

#include "core/records.h"
#include "db/connection.h"

namespace db {

void fillNewLogbook(Connection& connection, const core::LogbookFacts& facts);

}  // namespace db
