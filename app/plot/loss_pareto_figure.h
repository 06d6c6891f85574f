// SPDX-License-Identifier: MIT
// Losses by cause, most first: each cause's share of all lost as a bar with its interval drawn twice, as counted (thick) and allowing for
// batches that lose together (thin), and the running share as a line.
#pragma once

#include <memory>

#include "app/plot/figure.h"
#include "core/causes/losses.h"

namespace plot {

[[nodiscard]] std::shared_ptr<const Figure> lossParetoFigure(const core::Losses& losses);

}  // namespace plot
