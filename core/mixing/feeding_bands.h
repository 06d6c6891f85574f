// SPDX-License-Identifier: MIT
// How strong a solution plants want at each stage, as far as the trade says. A guide, not a rule.
#pragma once

#include <span>
#include <string_view>
#include <vector>

namespace core {

struct FeedingBand {
    std::string_view stage{};  // "cuttings before roots"
    double low{};              // mS/cm at 25 C
    double high{};
    std::string_view source{};

    bool operator==(const FeedingBand&) const = default;
};

/// From the weakest to the strongest.
[[nodiscard]] std::span<const FeedingBand> feedingBands();
/// Those that hold this EC, ends included; empty between two and beyond the last.
[[nodiscard]] std::vector<FeedingBand> feedingBandsAt(double ec);

}  // namespace core
