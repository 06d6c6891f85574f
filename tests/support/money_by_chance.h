// SPDX-License-Identifier: MIT
// The generators of every_action.h for prices, lots, expenses and counts after potting.
#pragma once

#include "tests/support/every_action.h"

namespace support {

[[nodiscard]] core::Result<db::Changes> performMoney(db::Logbook& logbook, Action action, Chance& chance,
                                                     core::Date today);

}  // namespace support
