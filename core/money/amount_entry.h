// SPDX-License-Identifier: MIT
// An amount of money as a person types it: "12.50", "12,5", "12"; at most two decimals, a tariff up to four, never below nothing.
#pragma once

#include <cstdint>
#include <string_view>

#include "core/result.h"

namespace core {

/// In hundredths. A refusal's field is "Amount".
[[nodiscard]] Result<std::int64_t> hundredthsFrom(std::string_view typed);

/// An amount of a price, with up to so many decimals, four at most. A refusal's field is "Amount".
[[nodiscard]] Result<std::int64_t> tenThousandthsFrom(std::string_view typed, int mostDecimals);

}  // namespace core
