// SPDX-License-Identifier: MIT
// Every figure of one pair of arms as a table: differences, ratios, tests, pooled over plants. What the words on the page rest on.
#pragma once

#include "app/plot/figure_table.h"
#include "core/comparison/comparison.h"

namespace desktop {

/// Domain: 0 <= pair < comparison.pairs.size().
[[nodiscard]] plot::FigureTable pairFigures(const core::Comparison& comparison, int pair);
/// "media tray against aerated water"
[[nodiscard]] QString pairName(const core::Comparison& comparison, int pair);

}  // namespace desktop
