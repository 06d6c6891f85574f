// SPDX-License-Identifier: MIT
// What becomes of one invented batch: the true fate of each cutting, and what the rounds of checks see of it.
#pragma once

#include <optional>
#include <span>
#include <string>
#include <vector>

#include "core/batch/check.h"
#include "core/batch/loss_cause.h"
#include "core/demo/demo_calendar.h"
#include "stats/numeric/seeded_random.h"

namespace core {

/// The circumstances of a batch. Days are the calendar's, but for those called "after" which count from sticking.
struct DemoBatchTruth {
    int stuckDay{};
    int stuck{};
    double strike{};      // share that can root in a batch like this one; the batch's own is drawn around it
    double medianDays{};  // of those that root
    bool isInWater{};
    std::optional<DaySpan> pests;       // while they were at its station
    std::optional<int> accidentAfter;   // everything not rooted by then is lost
    std::optional<int> withdrawnAfter;  // some are taken away at the first look from then on
    int withdrawn{};                    // how many, if so many are left
    int giveUpAfter{};                  // closed by hand at the first look from then on
};

/// What was seen and written down. Days are the calendar's.
struct DemoLook {
    int day{};
    int rooted{};
    int withdrawn{};
    std::vector<Loss> losses;
};

struct DemoHistory {
    std::vector<DemoLook> looks;
    std::optional<int> closedOn;  // by hand
    int undecided{};
};

/// `rounds` are the days on which somebody looked at the station, in order. Looks end when nothing is left to wait for.
[[nodiscard]] DemoHistory historyOf(const DemoBatchTruth& truth, std::span<const int> rounds,
                                    std::span<const LossCause> causes, stats::SeededRandom& random);

}  // namespace core
