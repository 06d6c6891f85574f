// SPDX-License-Identifier: MIT
// Reads numbers as a person types them: one point or comma is the decimal sign, no grouping, nothing else. Locale parsers turn a
// typed 1.2 into 12 in silence; this one refuses what it does not understand.
#pragma once

#include <optional>
#include <string_view>

namespace core {

/// A decimal number such as "1.2", "1,2", "-3" (also with U+2212); surrounding blanks are allowed.
[[nodiscard]] std::optional<double> numberFrom(std::string_view typed);
/// A whole number from 0 to 1 000 000 000: digits only; surrounding blanks are allowed.
[[nodiscard]] std::optional<int> countFrom(std::string_view typed);

}  // namespace core
