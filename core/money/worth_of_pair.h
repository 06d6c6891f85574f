// SPDX-License-Identifier: MIT
// Two methods against each other for what a rooted plant costs. For core/money/worth_it.h only.
#pragma once

#include <optional>
#include <span>
#include <string>
#include <vector>

#include "core/money/worth_cell.h"

namespace core {

struct PairToWeigh {
    MethodId first{};
    MethodId second{};
    std::span<const WorthCell> cells;  // of all methods
    std::optional<double> worthOfADay{};
    int pairs{1};  // that are looked at: a verdict allows for them all
};

/// Without its words. Each has a batch at least.
[[nodiscard]] WorthOfPair worthOfPair(const PairToWeigh& question, const WorthSettings& settings);

/// How many more cuttings of each would give the verdict four times in five, if rates and costs are as they seem: the least number at which the
/// logarithm of what a plant costs by the one over what it costs by the other is so many standard errors from 0 as the level (with the pairs
/// looked at) and four in five ask for. Each rate's variance falls as its cuttings grow in batches of the size that they had. Absent beyond 2000.
/// Simulated in tests/core/worth_power_test.cpp.
[[nodiscard]] std::optional<int> moreCuttingsToTell(const WorthOfPair& pair, double chance);

/// The chance that a verdict needs on its side: (1 + level) / 2, the level never below 0.9, and luck shared out among the pairs.
[[nodiscard]] double chanceThatSettles(double level, int pairs);

}  // namespace core
