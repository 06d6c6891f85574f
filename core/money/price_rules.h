// SPDX-License-Identifier: MIT
// What a price must obey.
#pragma once

#include "core/records.h"
#include "core/result.h"

namespace core {

/// Its name, its owner (there, one at most, none for a tariff and the worth of an hour or a day), its days, its amount, and of what its kind
/// asks for each figure that is needed. `today`: it may begin up to ten years later.
[[nodiscard]] Refusals faultsIn(const Price& price, const Shelves& shelves, Date today);

}  // namespace core
