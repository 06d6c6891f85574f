// SPDX-License-Identifier: MIT
// Rows for the tests of how fast cuttings root. All of it is invented.
#pragma once

#include <limits>
#include <vector>

#include "stats/time_to_event/observation.h"
#include "stats/time_to_event/speed_shape.h"

using SpeedBatches = std::vector<std::vector<stats::Observation>>;

/// Five batches of twenty on their own check days, of which most root within a fortnight.
[[nodiscard]] SpeedBatches quickBatches();
/// Five more of another arm: fewer root, and later.
[[nodiscard]] SpeedBatches slowBatches();
/// The same rows with every day multiplied.
[[nodiscard]] SpeedBatches withDaysTimes(SpeedBatches batches, double factor);

constexpr stats::SpeedShape everySpeedShape[] = {stats::SpeedShape::Weibull, stats::SpeedShape::LogNormal,
                                                 stats::SpeedShape::LogLogistic};
