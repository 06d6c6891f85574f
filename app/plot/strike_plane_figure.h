// SPDX-License-Identifier: MIT
// Which strike rates would turn the answer: the plane of the rates of two ways to root, the line on which a rooted plant costs the same by
// both, and where one's own records lie, with their intervals. The two sides of the line are named by letters and in words.
#pragma once

#include <memory>

#include "app/plot/figure.h"
#include "core/money/worth.h"

namespace plot {

[[nodiscard]] std::shared_ptr<const Figure> strikePlaneFigure(core::WorthOfPair pair, double level);

}  // namespace plot
