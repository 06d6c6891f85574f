// SPDX-License-Identifier: MIT
// Adds counts that may come from a damaged or hostile file. A sum stops at 500 million either way, so that a tally's
// stuck minus three such sums still fits an int; no batch that the rules allow comes near it.
#pragma once

#include <algorithm>
#include <cstdint>

namespace core {

[[nodiscard]] inline int countSum(int first, int second) {
    constexpr std::int64_t limit = 500'000'000;
    return static_cast<int>(std::clamp(std::int64_t{first} + std::int64_t{second}, -limit, limit));
}

}  // namespace core
