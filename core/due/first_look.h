// SPDX-License-Identifier: MIT
// When a batch wants its first look, by what is printed of the plant: half of the low figure of days to root, rounded up, and never before the
// fifth day (common practice, no source). Earlier there is nothing to see but what is disturbed.
#pragma once

#include "core/result.h"

namespace core {

/// Days from sticking on. Domain: days to root of 1 to 3650.
[[nodiscard]] Result<int> usualFirstLook(double lowDaysToRoot);

}  // namespace core
