// SPDX-License-Identifier: MIT
// Which function of ours a method of tests/data/reference/statistics.json speaks of, for the accuracy ledger.
#pragma once

#include <string_view>

namespace support {

/// The function's name; std::runtime_error for a method that isn't listed.
[[nodiscard]] std::string_view functionOf(std::string_view referenceMethod);

}  // namespace support
