// SPDX-License-Identifier: MIT
// How fast: the share of the cuttings stuck that has rooted by each day, one curve an arm, with the losses in a panel
// below and the counts waiting, rooted and lost under the axis. The curve steps only where somebody looked; what
// happened between two checks is unknown and drawn as a light box.
#pragma once

#include <QString>
#include <memory>

#include "app/plot/figure.h"
#include "core/comparison/batch_summary.h"
#include "core/comparison/comparison.h"

namespace plot {

[[nodiscard]] std::shared_ptr<const Figure> rootedByDayFigure(const core::Comparison& comparison);
/// One batch beside the grower's own past with the same plant and method.
[[nodiscard]] std::shared_ptr<const Figure> rootedByDayFigure(const core::BatchSummary& summary,
                                                              const QString& batchCode);

}  // namespace plot
