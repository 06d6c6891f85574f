// SPDX-License-Identifier: MIT
// The generators of every_action.h for what loggers record, the grower's own bands and mixes.
#pragma once

#include "tests/support/every_action.h"

namespace support {

[[nodiscard]] core::Result<db::Changes> performCondition(db::Logbook& logbook, Action action, Chance& chance,
                                                         core::Date today);

}  // namespace support
