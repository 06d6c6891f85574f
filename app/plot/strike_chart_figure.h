// SPDX-License-Identifier: MIT
// Strike rates of batches in order of sticking, between the limits within which luck alone keeps each of them. A signal has a shape and a
// label of its own, not only a colour.
#pragma once

#include <QString>
#include <memory>
#include <optional>

#include "app/plot/figure.h"
#include "core/comparison/turning_point.h"
#include "core/comparison/unusual.h"

namespace plot {

/// A turning point is marked where it is called: as a stretch between two dotted lines, with the rates before and after.
[[nodiscard]] std::shared_ptr<const Figure> strikeChartFigure(const core::StrikeChart& chart, const QString& thisBatch,
                                                              const std::optional<core::TurningPoint>& turn = {});

}  // namespace plot
