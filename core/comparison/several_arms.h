// SPDX-License-Identifier: MIT
// Three arms or more at once: do they differ at all, and which pairs still do when so many are looked at?
#pragma once

#include <optional>
#include <span>
#include <vector>

#include "core/comparison/arm_records.h"

namespace core {

/// Absent where an arm short of two has anything assessed.
[[nodiscard]] std::optional<SeveralArms> severalArmsOf(std::span<const ArmRecords> arms);

/// Holm's adjustment of the pairs' tests on batch rates and of their exact tests as counted. Pairs without a test are not counted.
void adjustForSeveral(std::vector<Pair>& pairs);

}  // namespace core
