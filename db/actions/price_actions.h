// SPDX-License-Identifier: MIT
// Edits of prices and lots. See session_actions.h for the manner.
#pragma once

#include <vector>

#include "core/result.h"
#include "db/logbook.h"

namespace db {

// Adds when the id is unset, else changes. Of a price only what its kind asks for is kept: core::tidied().
[[nodiscard]] core::Result<Changes> keep(Logbook& logbook, const core::Price& price, core::Date today);
[[nodiscard]] core::Result<Changes> keep(Logbook& logbook, const core::Lot& lot, core::Date today);
/// New ones in one step of history. A refusal's field and sentence begin with the name of its price: "air pump: Amount".
[[nodiscard]] core::Result<Changes> addPrices(Logbook& logbook, const std::vector<core::Price>& prices,
                                              core::Date today);

// Nothing names them, so nothing stands in the way.
[[nodiscard]] core::Result<Changes> remove(Logbook& logbook, core::PriceId id);
[[nodiscard]] core::Result<Changes> remove(Logbook& logbook, core::LotId id);

}  // namespace db
