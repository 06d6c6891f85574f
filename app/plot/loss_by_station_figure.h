// SPDX-License-Identifier: MIT
// Lost of the cuttings that stood, station by station, each rate with its interval as counted.
#pragma once

#include <memory>

#include "app/plot/figure.h"
#include "core/causes/losses.h"

namespace plot {

[[nodiscard]] std::shared_ptr<const Figure> lossByStationFigure(const core::Losses& losses);

}  // namespace plot
