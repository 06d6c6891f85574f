// SPDX-License-Identifier: MIT
// For which plants: one line a plant with the counts of both arms, the difference as a square sized by its cuttings,
// its interval, and the pooled diamond below; and whether the plants agree, in words.
#pragma once

#include <memory>

#include "app/plot/figure.h"
#include "core/comparison/comparison.h"

namespace plot {

/// Domain: 0 <= pair < comparison.pairs.size(); anything else gives a figure that says that there is nothing to
/// compare.
[[nodiscard]] std::shared_ptr<const Figure> forestFigure(const core::Comparison& comparison, int pair);

}  // namespace plot
