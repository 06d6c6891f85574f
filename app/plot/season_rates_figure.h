// SPDX-License-Identifier: MIT
// The strike rates of a season: each plant with the methods that it was stuck by, intervals drawn twice as in strike_rate_figure.h.
#pragma once

#include <memory>
#include <vector>

#include "app/plot/figure.h"
#include "core/review/season_review.h"

namespace plot {

struct SeasonRates {
    std::vector<core::PlantInReview>
        plants{};  // in the order in which they are drawn; those without a rate are left out
    double level{};
    core::RateInterval interval{};
};

[[nodiscard]] std::shared_ptr<const Figure> seasonRatesFigure(const SeasonRates& rates);
/// Lines that it draws: one for a plant, one for each of its methods.
[[nodiscard]] int linesOfSeasonRates(const core::PlantInReview& plant);

}  // namespace plot
