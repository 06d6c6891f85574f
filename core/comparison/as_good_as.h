// SPDX-License-Identifier: MIT
// "Is the simple way good enough?": as good as the other, within a margin that the grower set before looking. That no difference was found
// doesn't answer it.
#pragma once

#include <optional>
#include <string>

#include "core/comparison/arm_records.h"
#include "core/comparison/comparison.h"

namespace core {

/// Whether `arm` is at most `margin` worse than `other`. Both answers are judged by `pair`'s kind of verdict: where a station stands for the
/// method, nothing is shown.
[[nodiscard]] std::optional<AsGoodAs> asGoodAs(const ArmRecords& arm, const ArmRecords& other, double margin,
                                               double level);

/// One sentence for the pair: which arm is as good as which, or how much worse it may be. Empty where the verdict is that one is better.
[[nodiscard]] std::string asGoodAsInWords(const ArmRecords& first, const ArmRecords& second, const Pair& pair,
                                          Factor factor, double margin);

}  // namespace core
