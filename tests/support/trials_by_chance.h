// SPDX-License-Identifier: MIT
// The generators of every_action.h for planned trials and for plans.
#pragma once

#include "tests/support/every_action.h"

namespace support {

[[nodiscard]] core::Result<db::Changes> performTrial(db::Logbook& logbook, Action action, Chance& chance,
                                                     core::Date today);

}  // namespace support
