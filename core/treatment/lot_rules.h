// SPDX-License-Identifier: MIT
// What a lot must obey.
#pragma once

#include "core/records.h"
#include "core/result.h"

namespace core {

/// Its name (unique among those of its owner), one owner that is there, its days; one lot of an owner begins on a day.
[[nodiscard]] Refusals faultsIn(const Lot& lot, const Shelves& shelves, Date today);

}  // namespace core
