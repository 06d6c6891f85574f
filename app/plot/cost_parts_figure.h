// SPDX-License-Identifier: MIT
// What each rooted plant cost, by method or by plant and method: its parts as one stacked bar, and below the bar the interval that the strike
// rate leaves it. Parts carry a number each, so that nothing hangs on their colours.
#pragma once

#include <memory>
#include <string>
#include <vector>

#include "app/plot/figure.h"
#include "core/money/worth.h"

namespace plot {

struct CostRows {
    std::vector<core::WorthOfMethod> methods{};
    bool hasPlants{};  // each is of one plant, whose name comes first
    std::string currency{};
    double level{};
};

[[nodiscard]] std::shared_ptr<const Figure> costPartsFigure(CostRows rows);

}  // namespace plot
