// SPDX-License-Identifier: MIT
// Which function of ours a method of tests/data/reference/statistics.json speaks of, for the accuracy ledger.
#pragma once

#include <nlohmann/json.hpp>
#include <string_view>

namespace support {

/// The function's name; std::runtime_error for a method that isn't listed. Some methods have variants, told by a flag among the inputs or by
/// the field.
[[nodiscard]] std::string_view functionOf(std::string_view referenceMethod, const nlohmann::json& inputs,
                                          std::string_view field);

}  // namespace support
