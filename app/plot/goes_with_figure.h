// SPDX-License-Identifier: MIT
// What went with rooting in the records: odds ratios on a log axis, each interval drawn twice, as counted (thick) and allowing for the spread
// between batches (thin).
#pragma once

#include <memory>

#include "app/plot/figure.h"
#include "core/comparison/goes_with.h"

namespace plot {

[[nodiscard]] std::shared_ptr<const Figure> goesWithFigure(const core::GoesWith& answer, double level);

}  // namespace plot
