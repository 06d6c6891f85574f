// SPDX-License-Identifier: MIT
// The strike rate of every arm on one axis, its interval drawn twice: as counted (thick) and allowing for the spread
// between batches (thin).
#pragma once

#include <memory>

#include "app/plot/figure.h"
#include "core/comparison/comparison.h"

namespace plot {

[[nodiscard]] std::shared_ptr<const Figure> strikeRateFigure(const core::Comparison& comparison);

}  // namespace plot
