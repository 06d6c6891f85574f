// SPDX-License-Identifier: MIT
// How much luck the cuttings of one batch share, judged by the whole logbook.
#pragma once

#include <span>

#include "core/comparison/arm_records.h"
#include "stats/overdispersion/intraclass_correlation.h"

namespace core {

/// Pooled over groups of like batches, counted at the horizon.
[[nodiscard]] stats::PooledSpread pooledSpreadOf(std::span<const BatchRecord> wholeLogbook, int horizonDay,
                                                 double level);

/// The same without one batch that is to be judged: what it says of spread would excuse it.
[[nodiscard]] stats::PooledSpread pooledSpreadWithout(std::span<const BatchRecord> wholeLogbook, BatchId judged,
                                                      int horizonDay, double level);

/// The same without the batches of one plant by one method, whose own spread is in question.
[[nodiscard]] stats::PooledSpread pooledSpreadOfOthers(std::span<const BatchRecord> wholeLogbook, PlantId plant,
                                                       MethodId method, int horizonDay, double level);

/// Pooled over groups of like batches (same plant, method, treatment, medium, kind of cutting) of the whole logbook, counted at the horizon;
/// the design effect is that of the batches in `arms`.
[[nodiscard]] Spread spreadOf(std::span<const BatchRecord> wholeLogbook, int horizonDay,
                              std::span<const ArmRecords> arms, double level);

/// Batches of an arm that rooted all or none show no spread of their own. With two or more, their interval with spread is then Wilson's on
/// the number of cuttings over the design effect that the logbook's spread gives for them.
void borrowSpread(const Spread& spread, double level, ArmRecords& records);

}  // namespace core
