// SPDX-License-Identifier: MIT
// The curves of one arm or one batch: what share had rooted, or was lost, by each day on which somebody looked, what was counted after
// that day's look, and the days to root that can be read off.
#pragma once

#include <cstdint>
#include <optional>
#include <span>
#include <stop_token>
#include <vector>

#include "core/comparison/comparison.h"
#include "core/comparison/course.h"
#include "stats/time_to_event/competing_risks_npmle.h"

namespace core {

/// Bands and intervals by drawing whole batches again.
struct Resampling {
    double level{0.95};
    int replicates{1000};
    std::uint64_t seed{};
};

struct RootingCurves {
    std::vector<DayShare> rootedByDay;  // one a day on which any batch was looked at
    std::vector<DayShare> lostByDay;
    std::vector<int> stillWatched;
    std::vector<LookCounts> looks;
    DaysToRoot ofStuck;
    DaysToRoot ofRooted;
    CurveMakeup makeup;
    std::vector<stats::SupportInterval> rooting;  // the curve itself
};

/// Without `resampling`, or with a single batch, there are no bands. A stop request ends it early with what there is.
[[nodiscard]] RootingCurves rootingCurves(std::span<const Course> courses, const std::optional<Resampling>& resampling,
                                          const std::stop_token& stop = {});

/// What one estimate of the curve costs, in steps: it grows with the square of the different rows. About fifty million steps a second.
[[nodiscard]] double stepsPerEstimate(std::span<const Course> courses);

/// An answer is to come while somebody waits, also over a logbook of many seasons. What is drawn again grows with it while the intervals
/// narrow, so fewer draws than wanted will do; below 39 a 95 % interval has no percentiles. A count, not a clock, so that the same
/// records give the same figures everywhere.
[[nodiscard]] int affordable(int wanted, double stepsOfOne);

}  // namespace core
