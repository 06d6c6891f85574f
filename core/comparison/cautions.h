// SPDX-License-Identifier: MIT
// What to mind when reading a comparison or a summary, one sentence each: what the figures alone would hide.
#pragma once

#include <string>
#include <vector>

#include "core/comparison/arm_records.h"

namespace core {

/// Where records come from: invented ones and published ones say so.
[[nodiscard]] std::vector<std::string> originCautions(const LogbookFacts& facts);

[[nodiscard]] std::vector<std::string> comparisonCautions(Factor factor, int horizonDay, const Shelves& shelves,
                                                          std::span<const ArmRecords> arms);

}  // namespace core
