// SPDX-License-Identifier: MIT
// The generators of every_action.h for what happens beside checks, and for merges.
#pragma once

#include "tests/support/every_action.h"

namespace support {

[[nodiscard]] core::Result<db::Changes> performEvent(db::Logbook& logbook, Action action, Chance& chance,
                                                     core::Date today);
[[nodiscard]] core::Result<db::Changes> performMerge(db::Logbook& logbook, Action action, Chance& chance);

}  // namespace support
