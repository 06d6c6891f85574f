// SPDX-License-Identifier: MIT
// The demo's planned trial, of which one session is stuck and watched and one is still to come, and its two plans. Drawn from a stream of its
// own.
#pragma once

#include "core/demo/demo_calendar.h"
#include "core/demo/id_source.h"
#include "core/records.h"
#include "stats/numeric/seeded_random.h"

namespace core {

/// How many batches the trial's first session has; so many codes are left for them.
inline constexpr int demoTrialBatches = 4;

/// `records` have all else; `codes` are those of the trial's batches, `rounds` the days on which somebody went round each station.
void addDemoTrial(Records& records, const DemoCalendar& calendar, const std::vector<std::string>& codes,
                  const std::vector<std::vector<int>>& rounds, IdSource& ids, stats::SeededRandom& random);
void addDemoPlans(Records& records, const DemoCalendar& calendar, IdSource& ids);

}  // namespace core
