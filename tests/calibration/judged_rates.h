// SPDX-License-Identifier: MIT
// Intervals for the rate of one arm: do they hold the truth?
#pragma once

#include "tests/calibration/season.h"
#include "tests/calibration/tally.h"

namespace calibration {

/// With one tray the interval as counted is judged twice: as one for the rate of that tray, and as one for the rate of the arm,
/// of which it knows only a tray. Things: "<name>, of the tray", "<name>".
void judgeRatesAsCounted(const Season& season, Tally& tally);

/// From two trays: those that allow for spread, and Wilson's, which doesn't. Shown: only where the trays let spread be seen.
void judgeRatesWithSpread(const Season& season, Tally& tally);

}  // namespace calibration
