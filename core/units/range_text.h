// SPDX-License-Identifier: MIT
// How a refusal names a range of whole numbers: "0 to 12", or "only 0" where there is no choice.
#pragma once

#include <string>

namespace core {

[[nodiscard]] inline std::string rangeText(int low, int high) {
    if (low == high) return "only " + std::to_string(low);
    return std::to_string(low) + " to " + std::to_string(high);
}

}  // namespace core
