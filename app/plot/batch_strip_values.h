// SPDX-License-Identifier: MIT
// The axis of figures beside one panel of a batch's strip. Inside plot only.
#pragma once

#include <QString>

#include "app/plot/axis.h"
#include "app/plot/batch_strip_picture.h"

namespace plot {

/// The smallest round step with at most `most` of its multiples between the ends. Domain: low < high, most >= 1.
[[nodiscard]] double valueStep(double low, double high, int most);
[[nodiscard]] QString tickText(double tick, double step);
/// Marks at the ends stay clear of the edges, and a single figure has room around it. Domain: the panel has points.
[[nodiscard]] Scale valueScaleOf(const StripPanel& panel, double bottom, double top);

}  // namespace plot
