// SPDX-License-Identifier: MIT
// Deals a trial's cuttings to its arms, stations and places by chance, evenly: the same seed and the same room give the same deal on every
// machine.
//
//   const auto batches = core::allocateTrial(design, layout, 20260314);
//   if (!batches) show(batches.error());  // what is wrong with the layout, or how many cuttings per arm would fit
#pragma once

#include <cstdint>
#include <span>
#include <string>
#include <vector>

#include "core/result.h"
#include "core/trial/station_room.h"
#include "core/trial/trial.h"

namespace core {

inline constexpr int mostSessions = 50;

/// A plant or stock plant that cuttings are taken from.
struct TrialBlock {
    std::string name{};
    PlantId plant{};
    StockPlantId stockPlant{};
    int cuttings{};  // 0 in all blocks: they share what the arms need evenly
};

/// What there is to deal, and where to.
struct TrialLayout {
    std::vector<StationRoom> stations{};
    std::vector<TrialBlock>
        blocks{};  // plants or stock plants, where the trial is blocked by them; else none, or the one of all
    int sessions{1};
    bool
        isClearedBetween{};  // each session finds the stations as they are now; always so where methods are crossed over
};

/// Each block has each arm equally often, give or take one, in each session and over all; so has the whole; and where arms stand side by side,
/// so has each station within a block and session. Of `design` it reads factor, arms, blockedBy, perArm and isCrossedOver.
///
/// Factor method: an arm's cuttings go to the stations of its method, spread evenly. Crossed over: in each session the methods are dealt to
/// the stations by a Latin square turned at random, so that over the sessions each station has each method equally often. Any other factor:
/// all arms stand at each station, and its places are dealt to them by chance, within each side where blocks are sides.
///
/// Source    permuted blocks: stats/planning/random_allocation.h; the square: Fisher and Yates, as in any textbook of designs (from memory).
[[nodiscard]] Result<std::vector<TrialBatch>> allocateTrial(const Trial& design, const TrialLayout& layout,
                                                            std::uint32_t seed);
/// The largest number per arm for which the stations have room; 0: not even one, or the layout is at fault. How the arms of a crossover and
/// what is left over fall to stations of unequal size depends on the seed.
[[nodiscard]] int mostPerArm(const Trial& design, const TrialLayout& layout, std::uint32_t seed);

/// Every reason why nothing can be dealt, but want of room.
[[nodiscard]] Refusals faultsIn(const Trial& design, const TrialLayout& layout);

}  // namespace core
