// SPDX-License-Identifier: MIT
// One pooled answer over several plants that root more or less easily, where the arms differ alike in each.
#pragma once

#include "stats/numeric/seeded_random.h"
#include "tests/calibration/tally.h"

namespace calibration {

/// Four plants, so many trays of each in each arm: Mantel-Haenszel odds ratio where the true one is common to the plants, difference
/// likewise.
void judgePooledOverPlants(double correlation, int traysPerPlant, stats::SeededRandom& random, Tally& tally);

}  // namespace calibration
