// SPDX-License-Identifier: MIT
// What moves along when two things become one, where the one that stays may have the like already: for merge_actions.h only.
#pragma once

#include "db/logbook.h"
#include "db/writer.h"

namespace db {

/// What loggers recorded; of a moment that both stations have, the value of the one that stays is kept.
void moveLoggerDays(const Logbook& logbook, Writer& writer, core::StationId goes, core::StationId stays);
/// The grower's own bands; of a stage and quantity that both plants have, the band of the one that stays is kept.
void moveOwnBands(Writer& writer, const core::Shelves& shelves, core::PlantId goes, core::PlantId stays);

}  // namespace db
