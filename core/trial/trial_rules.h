// SPDX-License-Identifier: MIT
// What a trial must obey beside faultsIn(Trial, Shelves) of shelf_rules.h: what a planned one needs, what may be changed when, and what is
// stuck for it. How it is judged can be changed freely until the first check of one of its batches; after that only with a reason, which
// its report prints.
#pragma once

#include <string>
#include <vector>

#include "core/records.h"
#include "core/result.h"

namespace core {

inline constexpr std::size_t mostArms = 26;

/// What is missing before cuttings can be dealt: factor, arms, horizon day, number per arm.
[[nodiscard]] Refusals faultsInDesign(const Trial& trial, const Shelves& shelves);

/// What of `after` is judged otherwise than `before`: horizon day, measure, margin, factor, arms, blinding.
[[nodiscard]] std::vector<TrialChange> changesBetween(const Trial& before, const Trial& after, const Shelves& shelves,
                                                      Date on, const std::string& reason);
/// Why one can't become the other: a reason is missing when somebody has looked (`wasChecked`), or what was dealt would no longer fit.
[[nodiscard]] Refusals faultsInChange(const Trial& before, const Trial& after, bool wasChecked,
                                      const std::string& reason, const Shelves& shelves);

/// "media tray", "IBA gel 3000"; "not set" when the id is of nothing.
[[nodiscard]] std::string nameOf(const TrialArm& arm, Factor factor, const Shelves& shelves);
/// How many sessions were dealt; 0: none.
[[nodiscard]] int sessionsOf(const Trial& trial);
/// Any of what was dealt is stuck.
[[nodiscard]] bool isStuck(const Trial& trial);

/// A batch as it is to be stuck: what was dealt is filled in, the rest (plant, medium, treatment ... that is no arm's) is the grower's.
struct PlannedBatch {
    int number{};  // of the TrialBatch
    Batch batch{};
};

/// Those of a session that are not stuck yet. A batch of a station gets the station's method, or its arm's.
[[nodiscard]] std::vector<PlannedBatch> batchesToStick(const Trial& trial, int session, const Shelves& shelves);
/// Every way in which a batch differs from what was dealt.
[[nodiscard]] Refusals faultsInSticking(const PlannedBatch& planned, const Trial& trial, const Shelves& shelves);

}  // namespace core
