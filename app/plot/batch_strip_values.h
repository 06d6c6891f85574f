// SPDX-License-Identifier: MIT
// The axis of figures beside one panel of a batch's strip. Inside plot only.
#pragma once

#include <QString>
#include <vector>

#include "app/plot/axis.h"
#include "app/plot/batch_strip_picture.h"

namespace plot {

/// Two to five round figures between the ends. Domain: low < high.
[[nodiscard]] std::vector<double> valueTicks(double low, double high);
[[nodiscard]] QString tickText(double tick, double step);
/// Marks at the ends stay clear of the edges, and a single figure has room around it. Domain: the panel has points.
[[nodiscard]] Scale valueScaleOf(const StripPanel& panel, double bottom, double top);

}  // namespace plot
