// SPDX-License-Identifier: MIT
// Comparisons made by hand, for figures and print-outs: each shows one case. Counts are invented.
#pragma once

#include <string>

#include "core/comparison/batch_summary.h"
#include "core/comparison/comparison.h"

namespace examples {

/// An arm that was looked at each week from day 7 on; rooted and lost are running totals.
[[nodiscard]] core::Arm weeklyArm(const std::string& name, int stuck, const std::vector<int>& rooted,
                                  const std::vector<int>& lost, bool hasBands = true);
/// Two methods, three batches or more each, `species` plants (at most 12).
[[nodiscard]] core::Comparison twoMethods(int species = 5);
/// As above but with one station an arm and no bands.
[[nodiscard]] core::Comparison oneStationEach();
/// `count` arms, the last of them with nothing assessed.
[[nodiscard]] core::Comparison manyArms(int count);
/// Nothing at all.
[[nodiscard]] core::Comparison nothing();
/// Two arms that nobody has looked at.
[[nodiscard]] core::Comparison neverChecked();
/// Names far too long for any column.
[[nodiscard]] core::Comparison longNames();

/// One batch of 24, checked four times, beside an own past of six batches.
[[nodiscard]] core::BatchSummary batchSummary();

}  // namespace examples
