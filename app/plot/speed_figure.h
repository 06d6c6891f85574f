// SPDX-License-Identifier: MIT
// Who roots and how fast, as two figures for each arm: the share that roots in the end, and the median day of those that do, by the curve that
// fits it best.
#pragma once

#include <memory>

#include "app/plot/figure.h"
#include "core/comparison/comparison.h"

namespace plot {

[[nodiscard]] std::shared_ptr<const Figure> speedFigure(const core::Comparison& comparison);

}  // namespace plot
