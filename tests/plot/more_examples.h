// SPDX-License-Identifier: MIT
// Doses, speeds, what went with rooting and charts, made by hand for figures and print-outs: each shows one case. All figures are invented.
#pragma once

#include <vector>

#include "core/comparison/batch_summary.h"
#include "core/comparison/comparison.h"
#include "core/comparison/turning_point.h"

namespace examples {

/// Untreated and four doses, a curve with its top inside, an interval with spread.
[[nodiscard]] core::DoseSeries doseSeries();
/// Two doses, no untreated, no curve; one rooted none, the other all.
[[nodiscard]] core::DoseSeries twoDoses();
/// As doseSeries() but with no dose excluded, and one interval without end.
[[nodiscard]] core::DoseSeries endlessDoses();
/// Fourteen doses close together, in powder.
[[nodiscard]] core::DoseSeries crowdedDoses();

/// `count` associations, one of them clear, one endless, one at zero.
[[nodiscard]] core::GoesWith goesWith(int count);

/// Of `comparison`: fits for each arm, but for the last one, which has a reason instead.
[[nodiscard]] core::Comparison withSpeeds(core::Comparison comparison);

/// `count` batches of unequal sizes, every seventh out of its limits, the last one without anything assessed.
[[nodiscard]] core::StrikeChart strikeChart(int count);
/// Of strikeChart(14): from its ninth batch fewer, or anywhere from its seventh to its eleventh.
[[nodiscard]] core::TurningPoint turningPoint();

}  // namespace examples
