// SPDX-License-Identifier: MIT
#include "core/demo/demo_plan.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdint>

#include "core/demo/demo_shelves.h"
#include "core/trial/allocation.h"

namespace core {

namespace {

constexpr double shareOfPairs = 0.75;  // of the lots large enough to be split
constexpr double shareOfOtherTreatment = 0.3;
constexpr double shareOfOldMother = 0.4;
constexpr int batchesOfANursery = 1000;  // from here on lots are larger

/// Cuts lots of cuttings and deals them out. Knows what was cut before, so that plants and stations take turns.
class LotPlanner {
  public:
    LotPlanner(int batches, const std::vector<Trial>& trials, stats::SeededRandom& random)
        : isNursery_(batches >= batchesOfANursery), trials_(trials), random_(random), turns_(demoPlants().size()) {}

    DemoSessionPlan session(int day, int batches) {
        DemoSessionPlan plan{.day = day, .batches = {}};
        while (batches > 0) {
            const bool isPair = batches >= 2 && random_.uniform() < shareOfPairs;
            if (isPair)
                addPair(plan);
            else
                addSingle(plan);
            batches -= isPair ? 2 : 1;
        }
        return plan;
    }

  private:
    int draw(int low, int high) {
        return low + static_cast<int>(random_.below(static_cast<std::uint64_t>(high - low + 1)));
    }

    /// Plants come out of a bag that is filled again when it is empty, so that each gets its share.
    int nextPlant() {
        if (bag_.empty()) {
            for (std::size_t plant = 0; plant < demoPlants().size(); ++plant)
                bag_.insert(bag_.end(), static_cast<std::size_t>(demoPlants()[plant].share), static_cast<int>(plant));
            random_.shuffle(std::span<int>(bag_));
        }
        const int plant = bag_.back();
        bag_.pop_back();
        return plant;
    }

    DemoBatchPlan lot() {
        DemoBatchPlan plan;
        plan.plant = nextPlant();
        plan.mother = random_.uniform() < shareOfOldMother ? 1 : 0;
        plan.hasOtherTreatment = random_.uniform() < shareOfOtherTreatment;
        return plan;
    }

    /// The stations of a method take turns, for each plant on its own.
    int nextStation(int plant, int method) {
        std::array<int, 2>& turns = turns_[static_cast<std::size_t>(plant)];
        const int turn = turns[static_cast<std::size_t>(method)]++;
        return method * stationsPerMethod + (turn + plant) % stationsPerMethod;
    }

    void addSingle(DemoSessionPlan& session) {
        DemoBatchPlan plan = lot();
        plan.method = draw(aeratedWater, mediaTray);
        plan.station = nextStation(plan.plant, plan.method);
        plan.stuck = isNursery_ ? draw(30, 70) : draw(12, 30);
        session.batches.push_back(plan);
    }

    /// One lot of like cuttings, dealt by chance over a tub and a bench.
    void addPair(DemoSessionPlan& session) {
        DemoBatchPlan plan = lot();
        const int cuttings = isNursery_ ? draw(60, 140) : draw(28, 48);
        plan.trial = session.day < DemoCalendar::secondSeason ? 0 : 1;
        const std::size_t trial = static_cast<std::size_t>(plan.trial);
        plan.block = ++blocks_[trial];
        const std::uint32_t seed = trials_[trial].allocationSeed.value_or(0) + static_cast<std::uint32_t>(plan.block);
        const Allocation allocation = allocateByChance(cuttings, 2, seed);
        for (const int method : {aeratedWater, mediaTray}) {
            plan.method = method;
            plan.station = nextStation(plan.plant, method);
            plan.stuck = allocation.perArm[static_cast<std::size_t>(method)];
            session.batches.push_back(plan);
        }
    }

    bool isNursery_;
    const std::vector<Trial>& trials_;
    stats::SeededRandom& random_;
    std::vector<std::array<int, 2>> turns_;
    std::array<int, 2> blocks_{};
    std::vector<int> bag_;
};

/// `sessions` places in [0, 1), in order, evenly spread but for some chance.
std::vector<double> placesInSeason(int sessions, stats::SeededRandom& random) {
    std::vector<double> places;
    for (int session = 0; session < sessions; ++session) places.push_back((session + random.uniform()) / sessions);
    return places;
}

std::vector<int> sessionDays(int sessions, stats::SeededRandom& random) {
    const int inFirstSeason = sessions * 2 / 5;
    std::vector<int> days;
    for (const double place : placesInSeason(inFirstSeason, random))
        days.push_back(static_cast<int>(place * DemoCalendar::seasonLength));
    // The second season grows busier towards today, so that there is work on the bench.
    for (const double place : placesInSeason(sessions - inFirstSeason, random))
        days.push_back(DemoCalendar::secondSeason + static_cast<int>(std::sqrt(place) * DemoCalendar::seasonLength));
    return days;
}

}  // namespace

std::vector<DemoSessionPlan> demoPlan(int batches, const std::vector<Trial>& trials, stats::SeededRandom& random) {
    const int sessions = std::clamp(batches / 3, 1, 280);
    const std::vector<int> days = sessionDays(sessions, random);
    LotPlanner planner(batches, trials, random);
    std::vector<DemoSessionPlan> plan;
    for (int session = 0; session < sessions; ++session) {
        const auto upTo = [&](int count) { return batches * count / sessions; };
        plan.push_back(planner.session(days[static_cast<std::size_t>(session)], upTo(session + 1) - upTo(session)));
    }
    return plan;
}

}  // namespace core
