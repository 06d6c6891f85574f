// SPDX-License-Identifier: MIT
// What the people of the demo wrote down of money, bottles and pots: prices with their days, lots of hormone and medium, what was spent on
// whole sessions, and what became of the rooted after they were potted on. All figures are round and made up.
#pragma once

#include "core/demo/demo_calendar.h"
#include "core/demo/id_source.h"
#include "core/records.h"
#include "stats/numeric/seeded_random.h"

namespace core {

/// `records` are whole but for this. Drawn from a stream of its own and last of all, so that nothing else depends on it.
void addDemoMoney(Records& records, const DemoCalendar& calendar, IdSource& ids, stats::SeededRandom& random);

}  // namespace core
