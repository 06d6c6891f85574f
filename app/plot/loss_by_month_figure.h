// SPDX-License-Identifier: MIT
// Lost of the cuttings that stood, month by month, each rate with its interval as counted and the counts below it.
#pragma once

#include <memory>

#include "app/plot/figure.h"
#include "core/causes/losses.h"

namespace plot {

[[nodiscard]] std::shared_ptr<const Figure> lossByMonthFigure(const core::Losses& losses);

}  // namespace plot
