// SPDX-License-Identifier: MIT
#include "core/trial/station_advice.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "tests/core/trial/trial_examples.h"
#include "tests/support/builders.h"

namespace {

using testing::ElementsAre;
using testing::IsEmpty;

std::vector<std::string> adviceOn(const core::Trial& design, std::vector<core::StationRoom> rooms) {
    return core::stationAdvice(design, examples::layoutOf(std::move(rooms)), support::someShelves());
}

TEST(StationAdvice, SaysThatOneTubAndOneTrayAnswerForThemselves) {
    const core::Trial design = examples::trialOf(core::Factor::Method, 2, 24);
    EXPECT_THAT(
        adviceOn(design, {examples::roomOf(support::tubNorth, 6, 10), examples::roomOf(support::benchWest, 6, 10)}),
        ElementsAre("With aerated water (1 station) and media tray (1 station), the answer is about these "
                    "stations, not about the methods: whatever is the matter with one station looks like its "
                    "method. At least 2 stations of each method would answer it; or cross over, so that each "
                    "station has each method in turn."));
    EXPECT_THAT(adviceOn(design, examples::fourRooms()), IsEmpty());
}

TEST(StationAdvice, NamesOnlyTheMethodThatIsShort) {
    auto rooms = examples::fourRooms();
    rooms.pop_back();
    EXPECT_THAT(adviceOn(examples::trialOf(core::Factor::Method, 2, 24), rooms),
                ElementsAre(testing::StartsWith("With media tray (1 station), the answer is about these stations")));
}

TEST(StationAdvice, AsksForAnotherStationWhereAllArmsStandAtOne) {
    const core::Trial design = examples::trialOf(core::Factor::Treatment, 2, 24);
    EXPECT_THAT(
        adviceOn(design, {examples::roomOf(support::benchWest, 6, 10)}),
        ElementsAre("All arms stand at Bench west, so the answer is about that station; a second one would show "
                    "whether it holds elsewhere."));
    EXPECT_THAT(adviceOn(design, examples::fourRooms()), IsEmpty());
}

TEST(StationAdvice, WantsAsManyStationsForEachMethodOfACrossover) {
    auto [design, layout] = examples::crossedOver(2, 2);
    EXPECT_THAT(adviceOn(design, layout.stations), IsEmpty());
    layout.stations.pop_back();
    EXPECT_THAT(
        adviceOn(design, layout.stations),
        ElementsAre("The 3 stations can't be shared evenly between 2 methods in a session: a multiple of 2 would "
                    "give each method as many."));
}

}  // namespace
