// SPDX-License-Identifier: MIT
// "Why did it fail?": one batch over its life. The curve of what rooted, below it care and photos as marks, then what was read at its
// station beside the bands in which cuttings root well, all on one axis of days since sticking.
#pragma once

#include <memory>

#include "app/plot/batch_life.h"
#include "app/plot/figure.h"
#include "core/comparison/batch_summary.h"

namespace plot {

[[nodiscard]] std::shared_ptr<const Figure> batchStripFigure(const core::BatchSummary& summary,
                                                             const core::Batch& batch, const BatchLife& life,
                                                             const core::DisplayUnits& units);

}  // namespace plot
