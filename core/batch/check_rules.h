// SPDX-License-Identifier: MIT
// What a check must obey, seen together with all other checks of its batch, those after it included.
#pragma once

#include <span>

#include "core/batch/batch.h"
#include "core/batch/check.h"
#include "core/records.h"
#include "core/result.h"

namespace core {

/// Every fault of `check`. `others` are the batch's checks without this one. Counts are never negative; rooted + lost + withdrawn
/// never exceeds stuck at any date, so a figure of last month is checked against all that follows; not before the batch, not in the future,
/// no second check of the day. Not after the batch was closed by
/// hand; findings as position_rules.h says. Where a check is changed, `before` is how it stands: the figure that was raised is to blame.
[[nodiscard]] Refusals faultsIn(const Check& check, const Batch& batch, std::span<const Check> others,
                                const Shelves& shelves, Date today, const Check* before = nullptr);

}  // namespace core
