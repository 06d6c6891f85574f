// SPDX-License-Identifier: MIT
// Everything that a plan leads to, worked out from the records as they are: how many to stick, when, and what that rests on.
#pragma once

#include <optional>
#include <span>
#include <vector>

#include "core/planning/how_many.h"
#include "core/planning/plan.h"
#include "core/planning/what_fits.h"
#include "core/planning/when.h"

namespace core {

struct PlanAnswer {
    Plan plan;
    PastRecords records;
    RootingDays rooting;
    Result<HowMany> howMany;
    std::optional<Result<When>> when;  // absent for a plan without a day
};

/// `spread` is the whole logbook's: pooledSpreadOf(). Some milliseconds for ordinary plans, a second for hundreds of plants: away from the
/// window's thread.
[[nodiscard]] PlanAnswer answerTo(const Plan& plan, const Shelves& shelves, std::span<const BatchRecord> batches,
                                  const stats::PooledSpread& spread, Date today);

/// The plans with an answer, against the free positions; PlanFit::plan counts in `answers`. A plan without a number to stick has no PlanFit.
[[nodiscard]] WhatFits whatFitsOf(std::span<const PlanAnswer> answers, std::span<const FreeStation> stations);

}  // namespace core
