// SPDX-License-Identifier: MIT
// How a figure of the trade came about: the formula, the same with the numbers put in, and whose it is. A grower can follow it on paper.
#pragma once

#include <string>

namespace core {

struct Working {
    std::string formula{};      // "strength = (EC wanted - EC of water) / EC at full strength"
    std::string withNumbers{};  // "(1 - 0.3) / 2.4 = 0.2917"
    std::string source{};       // "common practice, no source" where there is none

    bool operator==(const Working&) const = default;
};

inline constexpr const char* commonPractice = "common practice, no source";

/// A figure in a working or a remark: `digits` that count, never a power of ten: "0.2917", "100000".
[[nodiscard]] std::string briefText(double figure, int digits = 4);
/// "12 %" of a share of 0.12, at two digits that count.
[[nodiscard]] std::string briefPercent(double share);

}  // namespace core
