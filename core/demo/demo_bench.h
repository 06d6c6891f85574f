// SPDX-License-Identifier: MIT
// What the people of the demo wrote down beside their counts: where cuttings stood and which of them rooted, what the stations were like, what
// was done to them, and a few expenses. Drawn from a stream of its own, so that the counts don't depend on it.
#pragma once

#include "core/demo/demo_calendar.h"
#include "core/demo/id_source.h"
#include "core/records.h"
#include "stats/numeric/seeded_random.h"

namespace core {

/// `records` have their batches and checks, in order of day; the first two stations are tubs.
void addBenchRecords(Records& records, const DemoCalendar& calendar, IdSource& ids, stats::SeededRandom& random);

}  // namespace core
