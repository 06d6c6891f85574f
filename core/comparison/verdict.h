// SPDX-License-Identifier: MIT
// What may be concluded from two arms, and how it is said to a grower: the estimate, its interval, what is still open.
#pragma once

#include <string>

#include "core/comparison/arm_records.h"
#include "core/comparison/pair_of_arms.h"

namespace core {

/// A batch is the smallest thing that can speak for or against a method: its cuttings share their container's luck. One batch, or one
/// station that the other arm doesn't share, can't be told from the method; below three batches an arm their spread can't be judged;
/// from three on, trayGuardedTTest() on batch rates decides, adjusted for the pairs looked at, at the level asked for but never below
/// 0.9. Never the pooled counts.
[[nodiscard]] Verdict verdictOn(const ArmRecords& first, const ArmRecords& second, const Pair& pair, double level);

/// Two or three plain sentences.
[[nodiscard]] std::string pairInWords(const ArmRecords& first, const ArmRecords& second, const Pair& pair,
                                      const PairSettings& settings);

/// Why an arm's station or batch can't be told from what is compared; empty when it can.
[[nodiscard]] std::string whyNotTold(const ArmRecords& first, const ArmRecords& second, Factor factor);

}  // namespace core
