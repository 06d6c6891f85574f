// SPDX-License-Identifier: MIT
// How sure: one axis of "more rooted of 100" with the zero line, the interval drawn twice (as counted, thick; allowing
// for the spread between batches, thin). Where method and station cannot be told apart, the caution stands in the
// figure itself.
#pragma once

#include <memory>

#include "app/plot/figure.h"
#include "core/comparison/comparison.h"

namespace plot {

/// Domain: as forestFigure().
[[nodiscard]] std::shared_ptr<const Figure> differenceFigure(const core::Comparison& comparison, int pair);

}  // namespace plot
