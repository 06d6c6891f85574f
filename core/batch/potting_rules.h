// SPDX-License-Identifier: MIT
// What a count after potting must obey: no more potted than rooted by that day, no more lost than potted, on every day.
#pragma once

#include <span>

#include "core/records.h"
#include "core/result.h"

namespace core {

/// `others` are the batch's other counts; one with the same id is left out.
[[nodiscard]] Refusals faultsIn(const Potting& potting, const BatchRecord& record, std::span<const Potting> others,
                                Date today);
/// Whether the batch still has as many rooted as were potted, on every day: asked when its checks change. One refusal at most.
[[nodiscard]] Refusals faultsInPottings(const BatchRecord& record, std::span<const Potting> pottings);

}  // namespace core
