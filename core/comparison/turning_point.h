// SPDX-License-Identifier: MIT
// Did rooting change for good from some batch on, or is there no more to be seen than luck? One turn at the most is looked for among the
// batches of one plant by one method. A single odd batch: unusual.h.
#pragma once

#include <optional>
#include <span>
#include <string>
#include <vector>

#include "core/comparison/arm.h"
#include "core/comparison/course.h"
#include "stats/overdispersion/intraclass_correlation.h"

namespace core {

/// A batch that may be the first after the turn.
struct TurnBatch {
    BatchId id{};
    std::string code{};
    Date stuckOn{};
    Date lastBefore{};  // when the batch before it was stuck
};

struct TurnRate {
    double rate{};
    Limits limits{};
};

struct TurningPoint {
    double chance{};                     // that there was a turn at all
    double level{};                      // of the limits and of the stretch in which it lies
    int batches{};                       // with a known fate, among which it was looked for
    std::vector<BatchCount> counted{};   // these
    std::vector<double> correlations{};  // within batches, equally likely: what it allows for their spread
    TurnBatch likeliest{};
    double chanceOfLikeliest{};      // that it is this one, if there was a turn
    TurnBatch earliest{}, latest{};  // it lies between these, at the level, if there was one
    TurnRate before{}, after{};
    Limits change{};  // after less before
    std::string inWords{};

    /// Likely enough to be marked in a figure.
    [[nodiscard]] bool isCalled() const;
};

/// A turn is called from this chance on. Common practice, no source.
inline constexpr double chanceOfCalledTurn = 0.95;
/// It is looked for among the last so many, so that the answer comes at once.
inline constexpr int mostBatchesForTurn = 300;

/// Batches of one plant by one method, in any order, counted at the horizon. `others` is the spread of all other batches
/// of the logbook, from pooledSpreadOfOthers(): spread learnt from batches that turned would hide the turn. Absent with
/// fewer than three batches with a known fate: of two nobody can tell a turn from spread.
[[nodiscard]] std::optional<TurningPoint> turningPointOf(std::span<const Course> batches,
                                                         const stats::PooledSpread& others, double level);

}  // namespace core
