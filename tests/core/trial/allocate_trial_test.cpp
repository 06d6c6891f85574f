// SPDX-License-Identifier: MIT
#include "core/trial/allocate_trial.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <map>
#include <set>
#include <tuple>

#include "tests/core/trial/trial_examples.h"
#include "tests/support/builders.h"

namespace {

using examples::layoutOf;
using examples::roomOf;
using examples::trialOf;
using testing::ElementsAre;

std::vector<core::TrialBatch> dealtBy(const core::Trial& design, const core::TrialLayout& layout,
                                      std::uint32_t seed = 20260314) {
    auto dealt = core::allocateTrial(design, layout, seed);
    if (dealt) return std::move(*dealt);
    for (const core::Refusal& refusal : dealt.error()) ADD_FAILURE() << refusal.sentence;
    return {};
}

/// Cuttings by arm, of those for which `holds`.
template <class Claim>
std::vector<int> armsOf(const core::Trial& design, const std::vector<core::TrialBatch>& dealt, const Claim& holds) {
    std::vector<int> counts(design.arms.size());
    for (const core::TrialBatch& batch : dealt)
        if (holds(batch)) counts[static_cast<std::size_t>(batch.arm)] += batch.stuck;
    return counts;
}

std::vector<int> armsOf(const core::Trial& design, const std::vector<core::TrialBatch>& dealt) {
    return armsOf(design, dealt, [](const core::TrialBatch&) { return true; });
}

void expectEven(const std::vector<int>& counts) {
    EXPECT_LE(std::ranges::max(counts) - std::ranges::min(counts), 1) << testing::PrintToString(counts);
}

/// Blocks, sessions of blocks, and where arms stand side by side also their stations.
void expectBalanced(const core::Trial& design, const std::vector<core::TrialBatch>& dealt) {
    using Cell = std::tuple<std::string, int, core::StationId>;
    std::set<Cell> cells;
    for (const core::TrialBatch& batch : dealt) cells.insert({batch.block, batch.session, batch.station});
    for (const auto& [block, session, station] : cells) {
        expectEven(armsOf(design, dealt, [&](const core::TrialBatch& one) { return one.block == block; }));
        expectEven(armsOf(design, dealt,
                          [&](const core::TrialBatch& one) { return one.block == block && one.session == session; }));
        if (design.factor != core::Factor::Method)
            expectEven(armsOf(design, dealt, [&](const core::TrialBatch& one) {
                return one.block == block && one.session == session && one.station == station;
            }));
    }
    expectEven(armsOf(design, dealt));
}

/// Every place is free, of its side, given once; and as many as are stuck.
void expectPlaced(const core::Trial& design, const core::TrialLayout& layout,
                  const std::vector<core::TrialBatch>& dealt) {
    std::set<std::tuple<int, core::StationId, core::Position>> given;
    const bool isCleared = layout.isClearedBetween || design.isCrossedOver;
    for (const core::TrialBatch& batch : dealt) {
        const auto room = std::ranges::find(layout.stations, batch.station, &core::StationRoom::station);
        ASSERT_NE(room, layout.stations.end());
        if (room->columns == 0) {
            EXPECT_EQ(batch.positions, "");
            continue;
        }
        const auto places = core::positionsFrom(batch.positions);
        ASSERT_TRUE(places);
        EXPECT_EQ(places->size(), static_cast<std::size_t>(batch.stuck));
        for (const core::Position place : *places) {
            EXPECT_TRUE(std::ranges::binary_search(room->free, place)) << core::nameOf(place);
            EXPECT_TRUE(given.insert({isCleared ? batch.session : 0, batch.station, place}).second);
            if (design.blockedBy == core::BlockedBy::StationSide) {
                EXPECT_EQ(batch.block, core::sideName(room->name, core::isOnLeft(*room, place)));
            }
        }
    }
}

TEST(AllocateTrial, DealsAnyDesignEvenlyToFreePlaces) {
    constexpr std::uint32_t firstSeed = 1;
    for (std::uint32_t seed = firstSeed; seed < firstSeed + 3000; ++seed) {
        SCOPED_TRACE(testing::Message() << "seed " << seed);
        const auto [design, layout] = examples::anyDesign(seed);
        const auto dealt = core::allocateTrial(design, layout, seed);
        if (!dealt) {
            EXPECT_THAT(dealt.error(), ElementsAre(testing::Field(&core::Refusal::field, "Per arm")));
            EXPECT_THAT(dealt.error().front().sentence,
                        testing::HasSubstr("have room for " + std::to_string(core::mostPerArm(design, layout, seed))));
            EXPECT_LT(core::mostPerArm(design, layout, seed), *design.perArm);
            continue;
        }
        EXPECT_EQ(armsOf(design, *dealt), std::vector<int>(design.arms.size(), *design.perArm));
        int number = 0;
        for (const core::TrialBatch& batch : *dealt) EXPECT_EQ(batch.number, ++number);
        expectBalanced(design, *dealt);
        expectPlaced(design, layout, *dealt);
        if (HasFailure()) return;
    }
}

TEST(AllocateTrial, IsTheSameForTheSameSeed) {
    const auto [design, layout] = examples::anyDesign(8);
    EXPECT_EQ(dealtBy(design, layout, 4711), dealtBy(design, layout, 4711));
    EXPECT_NE(dealtBy(design, layout, 4711), dealtBy(design, layout, 4712));
}

/// What comes out, how often, over 100 000 deals.
template <class Outcome>
auto outcomesOf(const core::Trial& design, const core::TrialLayout& layout, const Outcome& outcome) {
    constexpr std::uint32_t firstSeed = 20261126, deals = 100'000;
    std::cout << "seeds " << firstSeed << " to " << firstSeed + deals - 1 << '\n';
    std::map<decltype(outcome(std::vector<core::TrialBatch>())), int> times;
    for (std::uint32_t seed = firstSeed; seed < firstSeed + deals; ++seed)
        ++times[outcome(dealtBy(design, layout, seed))];
    return times;
}

template <class Times>
double chiSquareOf(const Times& times) {
    double sum = 0, all = 0;
    for (const auto& [outcome, count] : times) all += count;
    const double expected = all / static_cast<double>(times.size());
    for (const auto& [outcome, count] : times) sum += (count - expected) * (count - expected) / expected;
    return sum;
}

// Upper 0.1 % points of chi-square, as in printed tables.
constexpr double rareWith1 = 10.828;
constexpr double rareWith2 = 13.816;
constexpr double rareWith19 = 43.820;

TEST(AllocateTrial, DealsPlacesUniformly) {
    // Three cuttings an arm on six places: 20 ways, each equally likely.
    const core::Trial design = trialOf(core::Factor::Treatment, 2, 3);
    const auto times = outcomesOf(design, layoutOf({roomOf(support::benchWest, 2, 3)}),
                                  [](const auto& dealt) { return dealt.front().positions; });
    ASSERT_EQ(times.size(), 20U);
    EXPECT_LT(chiSquareOf(times), rareWith19);
}

TEST(AllocateTrial, GivesWhatIsLeftOverInABlockToAnyArm) {
    core::Trial design = trialOf(core::Factor::Treatment, 3, 2);
    design.blockedBy = core::BlockedBy::Plant;
    core::TrialLayout layout = layoutOf({roomOf(support::benchWest, 4, 4)});
    layout.blocks = {{.name = "hebe", .plant = support::hebe, .cuttings = 4},
                     {.name = "deutzia", .plant = support::deutzia, .cuttings = 2}};
    const auto times = outcomesOf(design, layout, [&](const auto& dealt) {
        const auto arms = armsOf(design, dealt, [](const core::TrialBatch& one) { return one.block == "hebe"; });
        return std::ranges::max_element(arms) - arms.begin();
    });
    ASSERT_EQ(times.size(), 3U);
    EXPECT_LT(chiSquareOf(times), rareWith2);
}

TEST(AllocateTrial, TurnsTheSquareOfACrossoverUniformly) {
    const auto [design, layout] = examples::crossedOver(2, 2);
    const auto times = outcomesOf(design, layout, [](const auto& dealt) { return dealt.front().arm; });
    ASSERT_EQ(times.size(), 2U);
    EXPECT_LT(chiSquareOf(times), rareWith1);
}

TEST(AllocateTrial, CrossedOverGivesEachStationEachMethodEquallyOften) {
    for (const int arms : {2, 3, 4})
        for (std::uint32_t seed = 1; seed <= 50; ++seed) {
            const auto [design, layout] = examples::crossedOver(arms, 2 * arms);
            std::map<std::pair<core::StationId, int>, int> sessions;
            std::map<std::pair<int, int>, int> stations;
            for (const core::TrialBatch& batch : dealtBy(design, layout, seed)) {
                ++sessions[{batch.station, batch.arm}];
                ++stations[{batch.session, batch.arm}];
            }
            EXPECT_EQ(sessions.size(), static_cast<std::size_t>(2 * arms * arms));
            for (const auto& [key, count] : sessions) EXPECT_EQ(count, 2);
            EXPECT_EQ(stations.size(), static_cast<std::size_t>(2 * arms * arms)) << "each session has each method";
        }
}

TEST(AllocateTrial, KeepsMethodsToTheirStationsAndSpreadsThemEvenly) {
    core::Trial design = trialOf(core::Factor::Method, 2, 21);
    design.blockedBy = core::BlockedBy::StockPlant;
    core::TrialLayout layout = layoutOf(examples::fourRooms());
    layout.blocks = {{.name = "by the gate", .plant = support::hebe, .stockPlant = support::hebeByTheGate},
                     {.name = "pot yard", .plant = support::deutzia, .stockPlant = support::deutziaInThePotYard}};
    std::map<core::StationId, int> cuttings;
    for (const core::TrialBatch& batch : dealtBy(design, layout)) {
        const bool isTub = batch.station == support::tubNorth || batch.station == support::tubSouth;
        EXPECT_EQ(design.arms[static_cast<std::size_t>(batch.arm)].method,
                  isTub ? support::aeratedWater : support::mediaTray);
        EXPECT_EQ(batch.stockPlant, batch.block == "pot yard" ? support::deutziaInThePotYard : support::hebeByTheGate);
        cuttings[batch.station] += batch.stuck;
    }
    ASSERT_EQ(cuttings.size(), 4U);
    for (const auto& [station, count] : cuttings) EXPECT_THAT(count, testing::AnyOf(10, 11));
}

TEST(AllocateTrial, GivesCuttingsOfEachBlockAsManyAsThereAre) {
    core::Trial design = trialOf(core::Factor::Treatment, 2, 10);
    design.blockedBy = core::BlockedBy::Plant;
    core::TrialLayout layout = layoutOf(examples::fourRooms());
    layout.blocks = {{.name = "hebe", .plant = support::hebe, .cuttings = 13},
                     {.name = "deutzia", .plant = support::deutzia, .cuttings = 6}};
    const auto dealt = dealtBy(design, layout);
    const auto inBlock = [&](const char* name) {
        const auto arms = armsOf(design, dealt, [&](const core::TrialBatch& one) { return one.block == name; });
        return arms[0] + arms[1];
    };
    EXPECT_EQ(inBlock("hebe"), 13);
    EXPECT_EQ(inBlock("deutzia"), 6);
    expectBalanced(design, dealt);
}

TEST(AllocateTrial, SaysHowManyFitWhereTheStationsAreTooSmall) {
    const core::Trial design = trialOf(core::Factor::Treatment, 2, 24);
    const core::TrialLayout layout =
        layoutOf({roomOf(support::benchWest, 2, 9), roomOf(support::benchEast, 3, 5)});  // 33 places
    const auto dealt = core::allocateTrial(design, layout, 1);
    ASSERT_FALSE(dealt);
    EXPECT_EQ(dealt.error().front().sentence,
              "Per arm is 24, but the stations have room for 16; up to 16 is allowed, or more stations.");
    EXPECT_EQ(core::mostPerArm(design, layout, 1), 16);
    EXPECT_EQ(armsOf(design, dealtBy(trialOf(core::Factor::Treatment, 2, 16), layout)), (std::vector<int>{16, 16}));
    EXPECT_FALSE(core::allocateTrial(trialOf(core::Factor::Treatment, 2, 17), layout, 1));
}

TEST(AllocateTrial, FindsStationsEmptyAgainWhereTheyAreClearedBetweenSessions) {
    const core::Trial design = trialOf(core::Factor::Treatment, 2, 20);
    core::TrialLayout layout = layoutOf({roomOf(support::benchWest, 4, 5)});
    layout.sessions = 2;
    EXPECT_EQ(core::mostPerArm(design, layout, 1), 10);
    layout.isClearedBetween = true;
    EXPECT_EQ(core::mostPerArm(design, layout, 1), 20);
    expectPlaced(design, layout, dealtBy(design, layout));
}

TEST(AllocateTrial, LeavesPlacesOpenWhereTheLayoutIsNotDescribed) {
    core::StationRoom room = roomOf(support::benchWest, 0, 0);
    room.places = 12;
    const auto dealt = dealtBy(trialOf(core::Factor::Treatment, 2, 6), layoutOf({room}));
    ASSERT_EQ(dealt.size(), 2U);
    EXPECT_EQ(dealt.front().positions + dealt.back().positions, "");
    EXPECT_FALSE(core::allocateTrial(trialOf(core::Factor::Treatment, 2, 7), layoutOf({room}), 1));
}

std::vector<std::string> layoutFaults(const core::Trial& design, const core::TrialLayout& layout) {
    std::vector<std::string> sentences;
    for (const core::Refusal& refusal : core::faultsIn(design, layout)) {
        EXPECT_FALSE(refusal.field.empty() || refusal.value.empty() || refusal.allowed.empty()) << refusal.sentence;
        sentences.push_back(refusal.sentence);
    }
    if (!sentences.empty()) {
        EXPECT_FALSE(core::allocateTrial(design, layout, 1));
    }
    return sentences;
}

TEST(AllocateTrial, RefusesABlankDesignWithEveryReason) {
    EXPECT_THAT(layoutFaults({}, {}),
                ElementsAre("Factor is not given; method, treatment, medium or cutting is allowed.",
                            "Arms are 0; 2 to 26 are allowed.", "Per arm is not given; 1 to 100000 is allowed.",
                            "Stations are none; at least one is needed."));
}

TEST(AllocateTrial, RefusesSessionsThatCannotBe) {
    core::Trial design = trialOf(core::Factor::Treatment, 2, 6);
    core::TrialLayout layout = layoutOf(examples::fourRooms());
    layout.sessions = 0;
    EXPECT_THAT(layoutFaults(design, layout), ElementsAre("Sessions is 0; 1 to 50 is allowed."));
    layout.sessions = 1;
    design.blockedBy = core::BlockedBy::Session;
    EXPECT_THAT(layoutFaults(design, layout), ElementsAre("Sessions is 1; 2 to 50 is allowed."));
    auto [crossed, rooms] = examples::crossedOver(2, 2);
    rooms.sessions = 3;
    EXPECT_THAT(layoutFaults(crossed, rooms),
                ElementsAre("Sessions are 3; a multiple of 2 is allowed, so that each station has each method equally "
                            "often."));
}

TEST(AllocateTrial, RefusesStationsThatCannotServe) {
    EXPECT_THAT(layoutFaults(trialOf(core::Factor::Method, 2, 6), layoutOf({roomOf(support::tubNorth, 6, 10)})),
                ElementsAre("Stations of arm 2 are none; at least one of its method is needed."));
    auto [crossed, rooms] = examples::crossedOver(2, 2);
    rooms.stations.resize(1);
    EXPECT_THAT(layoutFaults(crossed, rooms),
                ElementsAre("Stations are 1; at least 2 are needed, so that each session has each method."));
    core::Trial bySide = trialOf(core::Factor::Treatment, 2, 6);
    bySide.blockedBy = core::BlockedBy::StationSide;
    EXPECT_THAT(layoutFaults(bySide, layoutOf({roomOf(support::benchWest, 9, 1)})),
                ElementsAre("Columns of Bench west is 1; 2 or more, or a station has no sides, is allowed."));
    const core::StationRoom room = roomOf(support::benchWest, 6, 10);
    EXPECT_THAT(layoutFaults(trialOf(core::Factor::Treatment, 2, 6), layoutOf({room, room})),
                ElementsAre("Stations is \"Bench west\" once more; each once is allowed."));
}

TEST(AllocateTrial, RefusesBlocksThatDoNotAddUp) {
    core::Trial design = trialOf(core::Factor::Treatment, 2, 10);
    core::TrialLayout layout = layoutOf(examples::fourRooms());
    layout.blocks = {{.name = "hebe", .plant = support::hebe, .cuttings = 12},
                     {.name = "hebe", .plant = {}, .cuttings = 5}};
    EXPECT_THAT(layoutFaults(design, layout),
                ElementsAre("Plants are 2; one is allowed, or a trial that is blocked by plants."));
    design.blockedBy = core::BlockedBy::Plant;
    EXPECT_THAT(layoutFaults(design, layout),
                ElementsAre("Block is \"hebe\" once more; each block once is allowed.",
                            "Plant of block hebe is not given; one that this logbook has is allowed.",
                            "Cuttings of all blocks is 17; 19 to 20 is allowed."));
    layout.blocks.clear();
    EXPECT_THAT(layoutFaults(design, layout), ElementsAre("Blocks are 0; 1 to 1000 are allowed."));
}

TEST(StationRoom, IsWhatNobodyHoldsAndNothingBlocks) {
    core::Station bench = *core::find(support::someShelves().stations, support::benchWest);
    bench.rows = 2;
    bench.columns = 4;
    bench.blocked = "B4";
    const core::BatchRecord open = support::aBatch().at(support::benchWest).standing("A1-A2");
    const core::BatchRecord done = support::aBatch().at(support::benchWest).standing("A3").closed(30);
    const core::StationRoom room = core::roomAt(bench, std::vector{open, done});
    EXPECT_EQ(core::textOf(room.free), "A3-A4, B1-B3");
    EXPECT_EQ(room.places, 5);
    EXPECT_EQ(room.columns, 4);
    EXPECT_EQ(room.method, support::mediaTray);
    EXPECT_TRUE(core::isOnLeft(room, {0, 1}));
    EXPECT_FALSE(core::isOnLeft(room, {0, 2}));
    bench.rows = bench.columns = 0;
    bench.blocked.clear();
    EXPECT_TRUE(core::roomAt(bench, {}).free.empty());
    EXPECT_EQ(core::roomAt(bench, {}).places, 100'000) << "no limit known";
}

/// Two sessions of six a side, side by side on one bench.
core::Trial placedTrial() {
    core::Trial trial = trialOf(core::Factor::Treatment, 2, 12);
    core::TrialLayout layout = layoutOf({roomOf(support::benchWest, 6, 10)});
    layout.sessions = 2;
    layout.isClearedBetween = true;
    trial.allocationSeed = 99;
    trial.batches = dealtBy(trial, layout, 99);
    return trial;
}

TEST(PlacedAgain, GivesTheSamePlacesWhereNothingHasChanged) {
    const core::Trial trial = placedTrial();
    const auto again = core::placedAgain(trial, 2, {roomOf(support::benchWest, 6, 10)});
    ASSERT_TRUE(again);
    EXPECT_EQ(*again, trial.batches);
}

TEST(PlacedAgain, KeepsToWhatIsFreeNowAndToTheNumbers) {
    const core::Trial trial = placedTrial();
    core::StationRoom room = roomOf(support::benchWest, 6, 10);
    room.free.erase(room.free.begin(), room.free.begin() + 20);  // two rows have been given away
    room.places -= 20;
    const auto again = core::placedAgain(trial, 2, {room});
    ASSERT_TRUE(again);
    for (std::size_t place = 0; place < trial.batches.size(); ++place) {
        core::TrialBatch before = trial.batches[place], after = (*again)[place];
        EXPECT_EQ(after.positions == before.positions, before.session == 1);
        EXPECT_EQ(after.positions.front() >= 'C', before.session == 2) << after.positions;
        before.positions = after.positions;
        EXPECT_EQ(after, before);
    }
}

TEST(PlacedAgain, RefusesASessionThatIsStuckAndABenchThatIsFull) {
    core::Trial trial = placedTrial();
    const core::StationRoom room = roomOf(support::benchWest, 2, 5);
    const auto full = core::placedAgain(trial, 2, {room});
    ASSERT_FALSE(full);
    EXPECT_EQ(full.error().front().sentence, "Free places at Bench west are 10; at least 12 are needed.");
    trial.batches.front().batch = {7};
    for (const int session : {0, 1, 3}) {
        const auto none = core::placedAgain(trial, session, {roomOf(support::benchWest, 6, 10)});
        ASSERT_FALSE(none);
        EXPECT_EQ(none.error().front().sentence,
                  "Session is " + std::to_string(session) +
                      "; a session of the trial of which nothing is stuck yet is allowed.");
    }
}

}  // namespace
