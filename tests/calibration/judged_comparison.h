// SPDX-License-Identifier: MIT
// What the program shows of a season, from its records to the verdict: core::compare(), as the window and the command line call it.
#pragma once

#include <span>
#include <string_view>

#include "core/comparison/comparison.h"
#include "tests/calibration/judged_tests.h"
#include "tests/calibration/season.h"
#include "tests/calibration/tally.h"

namespace calibration {

/// Fewer whole-batch draws than the program's 1000, to spare time; the percentiles hardly differ.
inline constexpr int bootstrapDraws = 400;

/// Arms come with the most stuck first, as everywhere in the program.
[[nodiscard]] core::Comparison comparisonOf(const Season& season);

/// Thing: is the verdict that of the guarded t test on the trays?
inline constexpr const char* wholeProgramAgrees = "the whole program goes by the guarded t test";

/// Every interval of the pair and of the first arm, the chance that the first is better, the verdict. Things end with `after`.
void judgeComparison(const Season& season, const core::Comparison& comparison, Truth truth, std::string_view after,
                     Tally& tally);

/// With all batches of an arm at one station: is it always said that it can't be told?
void judgeOneStationAnArm(const Season& season, Tally& tally);

/// "chance said to be 0.9 to 0.975" and so on: where the first arm was said to be better with a chance in that range.
[[nodiscard]] std::span<const char* const> chanceRanges();

}  // namespace calibration
