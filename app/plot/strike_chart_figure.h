// SPDX-License-Identifier: MIT
// Strike rates of batches in order of sticking, between the limits within which luck alone keeps each of them. A signal has a shape and a
// label of its own, not only a colour.
#pragma once

#include <QString>
#include <memory>

#include "app/plot/figure.h"
#include "core/comparison/unusual.h"

namespace plot {

[[nodiscard]] std::shared_ptr<const Figure> strikeChartFigure(const core::StrikeChart& chart, const QString& thisBatch);

}  // namespace plot
