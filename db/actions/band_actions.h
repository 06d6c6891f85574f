// SPDX-License-Identifier: MIT
// Edits of the grower's own bands. See session_actions.h for the manner.
#pragma once

#include "core/result.h"
#include "db/logbook.h"

namespace db {

/// Of its stage, quantity and plant (unset: in general). One that is there already is changed, whatever the id says.
[[nodiscard]] core::Result<Changes> setOwnBand(Logbook& logbook, core::OwnBand band);
[[nodiscard]] core::Result<Changes> removeOwnBand(Logbook& logbook, core::OwnBandId id);

}  // namespace db
