// SPDX-License-Identifier: MIT
// Is a batch out of the ordinary for this grower? How likely so few were, given the earlier batches of the same plant by the same method;
// and a chart of those batches with the limits between which luck alone keeps them.
#pragma once

#include <optional>
#include <span>
#include <string>
#include <vector>

#include "core/comparison/arm.h"
#include "core/comparison/course.h"
#include "stats/overdispersion/intraclass_correlation.h"

namespace core {

/// A batch against what earlier ones foretold for the same day after sticking.
struct AgainstThePast {
    int day{};           // of its last look, or the horizon if that was earlier
    int rooted{}, of{};  // by that day, of those whose fate is known
    int pastBatches{};
    double expected{};               // of `of`
    int usualFewest{}, usualMost{};  // nine batches in ten
    double chanceOfSoFew{0.5};       // of so few or fewer, half of "exactly so many" counted
    std::vector<BatchCount> past;
    std::vector<double> correlations;  // within batches, equally likely: what it allows for their spread
    std::string inWords;
};

/// Absent before the first look, or where no earlier batch says anything at that day. `spread` must be learnt without the
/// batch itself (pooledSpreadWithout), or its own oddness excuses it and it is called odd too seldom.
[[nodiscard]] std::optional<AgainstThePast> againstThePast(const Course& batch, std::span<const Course> earlier,
                                                           int horizonDay, const stats::PooledSpread& spread);

enum class ChartSignal { Inside, Below, Above, NothingKnown };

/// That of three standard deviations, as control charts have had it since Shewhart.
inline constexpr double usualFalseAlarmRate = 0.0027;

struct ChartedBatch {
    BatchId id{};
    std::string code;
    Date stuckOn{};
    int rooted{}, assessed{};  // at the horizon
    std::optional<double> rate;
    Limits limits;  // between which luck alone keeps it
    ChartSignal signal{ChartSignal::NothingKnown};
};

struct StrikeChart {
    std::optional<double> centre;       // absent where nothing is assessed
    std::vector<ChartedBatch> batches;  // in order of sticking
    double falseAlarmRate{};            // of one batch, both sides together
    double correlation{};               // within batches, on which the limits rest
    std::string inWords;
};

/// Batches of one plant by one method, in any order. Domain: 0 < falseAlarmRate < 1.
[[nodiscard]] StrikeChart strikeChart(std::span<const Course> batches, double falseAlarmRate,
                                      const stats::PooledSpread& spread);

}  // namespace core
