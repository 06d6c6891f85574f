// SPDX-License-Identifier: MIT
// Plans followed through seasons whose truth is known: how often the number advised gives enough plants, and how much more it is than
// somebody would stick who knew the true rate and spread.
#pragma once

#include <cstdint>
#include <iosfwd>
#include <vector>

namespace calibration {

inline constexpr double plannedAssurance = 0.9;
inline constexpr int plannedTray = 20;
inline constexpr int recordsThatWillDo = 200;  // past cuttings, from which on a plan must come near the seer's
inline constexpr double mostAboveSeer = 1.25;

struct PlanScene {
    int wanted{};
    double correlation{};
    int pastBatches{};  // of plannedTray cuttings; 0: the reference band alone, from which the true rate is drawn
};

struct PlanFigures {
    PlanScene scene;
    int seasons{};
    double enough{};       // share of seasons with enough plants
    double enoughError{};  // half the width of its 95 % interval for the simulation's own chance
    double aboveSeer{};    // number advised, over the seer's, on average
    double mostAbove{};    // the same of the true rate at which it is largest
};

/// True rates 0.3, 0.4 ... 0.9, so many seasons each; beside the plant the logbook has six others of three batches, from which the spread is
/// learnt too. What a season gives is not drawn but its exact chance taken.
[[nodiscard]] PlanFigures judgePlans(const PlanScene& scene, int seasonsOfEachRate, std::uint64_t seed);

[[nodiscard]] std::vector<PlanScene> allPlanScenes();
void writePlansPage(int seasonsOfEachRate, std::uint64_t seed, std::ostream& out);

}  // namespace calibration
