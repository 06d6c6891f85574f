// SPDX-License-Identifier: MIT
// A long series as the few points that a picture can show: of each column of pixels the first, lowest, highest and last value, so that no
// peak is lost. Gaps stay open. Only for drawing: figures are worked out from all of it.
#pragma once

#include <span>
#include <vector>

#include "core/climate/over_time.h"

namespace plot {

using Line = std::vector<core::TimedValue>;

/// One line for each stretch without a gap; a single value between two gaps is a line of one. At most four points a column and two more
/// for each gap. Domain: values in order of time, from < to, columns >= 1. Linear in the number of values.
[[nodiscard]] std::vector<Line> thinnedLines(std::span<const core::TimedValue> values, core::Moment from,
                                             core::Moment to, std::chrono::seconds longestGap, int columns);

}  // namespace plot
