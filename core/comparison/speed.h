// SPDX-License-Identifier: MIT
// Who roots and how fast, as two figures: the share that roots in the end, and the days of those that do, by a smooth curve. Beside it
// stands the curve that supposes nothing (days_to_root.h), which decides where they differ.
#pragma once

#include <optional>
#include <span>
#include <stop_token>
#include <string>
#include <vector>

#include "core/comparison/arm.h"
#include "core/comparison/course.h"
#include "core/comparison/pair.h"

namespace core {

/// Lost cuttings count as never rooting, so that the share is one of all stuck, as the strike rate is. By batch where there are batches
/// enough for that, else as counted. Three shapes, the best fitting one first.
[[nodiscard]] RootingSpeed rootingSpeed(std::span<const Course> courses, double level,
                                        const std::stop_token& stop = {});

/// Both arms in the shape that fits the two together best, each with a share of its own.
[[nodiscard]] SpeedDifference compareSpeeds(std::span<const Course> first, std::span<const Course> second,
                                            const RootingSpeed& ofFirst, const RootingSpeed& ofSecond, double level);

}  // namespace core
