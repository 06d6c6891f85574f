// SPDX-License-Identifier: MIT
// Strike rate over the logarithm of the dose, untreated cuttings apart at the left, with the fitted curve and the dose of its top.
#pragma once

#include <memory>

#include "app/plot/figure.h"
#include "core/comparison/doses.h"

namespace plot {

[[nodiscard]] std::shared_ptr<const Figure> doseFigure(const core::DoseSeries& series, double level);

}  // namespace plot
