// SPDX-License-Identifier: MIT
// Who sticks what, when and where in the demo: sessions, and the batches of each. Says nothing of what becomes of them.
#pragma once

#include <vector>

#include "core/demo/demo_calendar.h"
#include "core/records.h"
#include "stats/numeric/seeded_random.h"

namespace core {

/// Numbers are indices into the demo's shelves.
struct DemoBatchPlan {
    int plant{};
    int mother{};  // 0 young, 1 old
    int method{};
    int station{};
    bool hasOtherTreatment{};
    int stuck{};
    int trial{};
    int block{};  // 0: in no trial
};

struct DemoSessionPlan {
    int day{};  // the calendar's
    std::vector<DemoBatchPlan> batches;
};

/// In order of day; `batches` in all. `trials` are those of demoShelves().
[[nodiscard]] std::vector<DemoSessionPlan> demoPlan(int batches, const std::vector<Trial>& trials,
                                                    stats::SeededRandom& random);

}  // namespace core
