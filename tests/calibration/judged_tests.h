// SPDX-License-Identifier: MIT
// Tests between two arms that a verdict could rest on: how often do they say that the arms differ?
#pragma once

#include <string>
#include <string_view>

#include "tests/calibration/season.h"
#include "tests/calibration/tally.h"

namespace calibration {

inline constexpr int fewestBatches = 3;  // in each arm, from which on the program gives a verdict

/// The seasons in which the answer is counted.
enum class Truth { Equal, Apart };
/// "<test>" where arms are equal, "<test>, apart" where they are not.
[[nodiscard]] std::string thingOf(std::string_view test, Truth truth);

/// Those that need no enumeration, at 5 %. `cell` is the one to count in.
void judgeTests(const Season& season, const Cell& cell, Truth truth, stats::SeededRandom& random, Tally& tally);

}  // namespace calibration
