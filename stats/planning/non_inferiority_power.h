// SPDX-License-Identifier: MIT
// How often a trial would show that the first way is as good as the second within a margin, summed over every outcome
// of both arms. How many per arm that takes: sample_size.h.
#pragma once

#include "stats/planning/exact_power.h"

namespace stats {

/// Probability, at the rates supposed, of a table for which nonInferiority() is shown: z above the quantile of the
/// two-sided `level`.
///
/// Domain    0 <= trials <= 1000 and 0 <= rate <= 1 in both arms, 0 < margin < 1, 0 < level < 1; else std::domain_error.
/// Returns   0 with an empty arm.
/// Assumes   two independent binomial counts; with trays that differ, count effective cuttings: see sample_size.h.
/// Accuracy  within 1e-12: outcomes that are rarer than 1e-16 are passed over. At 100 per arm a few milliseconds, at
///           500 about twenty times that.
/// Source    the test: Farrington and Manning (1990), Stat. Med. 9, 1447-1454.
[[nodiscard]] double nonInferiorityPower(const PlannedArms& arms, double margin, double level);

}  // namespace stats
