// SPDX-License-Identifier: MIT
// Readings of one quantity at one station over time beside the bands of what stands there: a line with gaps left open, readings by hand as
// marks, care below; the light of days as bars.
#pragma once

#include <memory>

#include "app/plot/climate_chart.h"
#include "app/plot/figure.h"

namespace plot {

[[nodiscard]] std::shared_ptr<const Figure> climateFigure(ClimateChart chart);

}  // namespace plot
