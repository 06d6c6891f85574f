// SPDX-License-Identifier: MIT
// When a method's own things are paid for: the chance of it by number of batches, for the figure.
#pragma once

#include <stop_token>
#include <vector>

#include "core/money/worth.h"

namespace core {

struct ChanceAfter {
    int batches{};
    double chance{};  // that they are paid for by then, and stay so

    bool operator==(const ChanceAfter&) const = default;
};

/// As BreakEvenBatches counts it, by number of batches, rising; its low, middle and high are among them where they are near enough to be
/// drawn on one axis. Empty where the pair has no break-even. A stop request ends it early; the caller throws the answer away.
[[nodiscard]] std::vector<ChanceAfter> payOffCurve(const WorthOfPair& pair, double level,
                                                   const std::stop_token& stop = {});

}  // namespace core
