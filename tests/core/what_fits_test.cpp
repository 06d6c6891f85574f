// SPDX-License-Identifier: MIT
#include "core/planning/what_fits.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <map>

#include "tests/support/builders.h"

namespace {

using core::FreeStation;
using core::PlanToFit;
using support::aeratedWater;
using support::mediaTray;

core::Date day(const char* iso) {
    return *core::dateFromIso(iso);
}

std::vector<FreeStation> twoTraysAndATub() {
    return {{.station = support::benchWest, .name = "Bench west", .method = mediaTray, .free = 40},
            {.station = support::benchEast, .name = "Bench east", .method = mediaTray, .free = 24},
            {.station = support::tubNorth, .name = "Tub north", .method = aeratedWater, .free = 30}};
}

TEST(WhatFits, SticksFirstWhatMustBeStuckFirst) {
    const std::vector<PlanToFit> plans{
        {.name = "Hebe", .method = mediaTray, .cuttings = 20, .stickBy = day("2026-05-01")},
        {.name = "Box", .method = mediaTray, .cuttings = 20, .stickBy = {}},
        {.name = "Fig", .method = mediaTray, .cuttings = 20, .stickBy = day("2026-03-01")}};
    const core::WhatFits fits = core::whatFits(plans, twoTraysAndATub());
    ASSERT_EQ(fits.inOrder.size(), 3U);
    EXPECT_EQ(fits.inOrder[0].plan, 2U);
    EXPECT_EQ(fits.inOrder[1].plan, 0U);
    EXPECT_EQ(fits.inOrder[2].plan, 1U);
    EXPECT_EQ(fits.inWords, "All 3 plans fit. Stick Fig first.");
}

TEST(WhatFits, TakesTheSmallestGapThatHoldsAPlanWhole) {
    const std::vector<PlanToFit> plans{{.name = "Hebe", .method = mediaTray, .cuttings = 22, .stickBy = {}}};
    const core::WhatFits fits = core::whatFits(plans, twoTraysAndATub());
    ASSERT_EQ(fits.inOrder[0].places.size(), 1U);
    EXPECT_EQ(fits.inOrder[0].places[0].name, "Bench east");
    EXPECT_EQ(fits.inOrder[0].inWords, "Hebe, 22 cuttings: Bench east.");
    EXPECT_EQ(fits.inWords, "It fits.");
}

TEST(WhatFits, SpreadsALargePlanOverAsFewStationsAsHoldIt) {
    const std::vector<PlanToFit> plans{{.name = "Hebe", .method = mediaTray, .cuttings = 60, .stickBy = {}}};
    const core::PlanFit fit = core::whatFits(plans, twoTraysAndATub()).inOrder[0];
    ASSERT_TRUE(fit.fits);
    ASSERT_EQ(fit.places.size(), 2U);
    EXPECT_EQ(fit.places[0].cuttings, 40);
    EXPECT_EQ(fit.places[1].cuttings, 20);
    EXPECT_EQ(fit.inWords, "Hebe, 60 cuttings: 40 in Bench west and 20 in Bench east.");
}

TEST(WhatFits, LeavesTheRoomOfAPlanThatDoesNotFitToThoseBehindIt) {
    const std::vector<PlanToFit> plans{
        {.name = "Hebe", .method = mediaTray, .cuttings = 70, .stickBy = day("2026-03-01")},
        {.name = "Box", .method = mediaTray, .cuttings = 60, .stickBy = day("2026-03-02")},
        {.name = "Mint", .method = aeratedWater, .cuttings = 30, .stickBy = day("2026-03-03")}};
    const core::WhatFits fits = core::whatFits(plans, twoTraysAndATub());
    EXPECT_FALSE(fits.inOrder[0].fits);
    EXPECT_TRUE(fits.inOrder[0].places.empty());
    EXPECT_EQ(fits.inOrder[0].free, 64);
    EXPECT_EQ(fits.inOrder[0].inWords, "Hebe, 70 cuttings: no room, 6 more free positions are needed.");
    EXPECT_TRUE(fits.inOrder[1].fits);
    EXPECT_TRUE(fits.inOrder[2].fits);
    EXPECT_EQ(fits.inWords, "2 of 3 plans fit. Stick Box first.");
}

TEST(WhatFits, LetsAPlanWithoutAMethodStandAnywhere) {
    const std::vector<PlanToFit> plans{{.name = "Mint", .method = {}, .cuttings = 94, .stickBy = {}}};
    EXPECT_TRUE(core::whatFits(plans, twoTraysAndATub()).inOrder[0].fits);
    EXPECT_EQ(core::whatFits({}, twoTraysAndATub()).inWords, "There is nothing to stick.");
    EXPECT_EQ(core::whatFits(plans, {}).inWords, "None of the plans fits into the free positions.");
}

TEST(WhatFits, NeverGivesAPositionTwice) {
    std::vector<PlanToFit> plans;
    for (int i = 0; i < 12; ++i)
        plans.push_back({.name = "P",
                         .method = i % 3 == 0 ? core::MethodId{} : mediaTray,
                         .cuttings = 3 + 5 * (i % 4),
                         .stickBy = {}});
    std::map<core::StationId, int> given;
    for (const core::PlanFit& fit : core::whatFits(plans, twoTraysAndATub()).inOrder) {
        int placed = 0;
        for (const core::Placement& place : fit.places) {
            given[place.station] += place.cuttings;
            placed += place.cuttings;
        }
        EXPECT_EQ(placed, fit.fits ? plans[fit.plan].cuttings : 0);
    }
    for (const FreeStation& station : twoTraysAndATub()) EXPECT_LE(given[station.station], station.free);
}

TEST(FreeStations, CountWhatOpenBatchesHold) {
    core::Shelves shelves = support::someShelves();
    shelves.stations[1].isRetired = true;
    shelves.stations[3].rows = 0;  // not described
    const auto lineOf = [](const core::BatchRecord& record) {
        return core::BatchLine{.batch = record.batch, .tally = core::tallyOf(record.batch, record.checks)};
    };
    const std::vector<core::BatchLine> lines{
        lineOf(support::aBatch().at(support::benchWest).stuck(24).looked(14, {.rooted = 6, .lost = 5}).build()),
        lineOf(support::aBatch()
                   .at(support::benchWest)
                   .stuck(10)
                   .looked(14, {.rooted = 4, .lost = 6})
                   .build()),  // decided
        lineOf(support::aBatch().at(support::tubNorth).stuck(70).build())};
    const std::vector<FreeStation> free = core::freeStations(shelves, lines);
    ASSERT_EQ(free.size(), 2U);
    EXPECT_EQ(free[0].name, "Tub north");
    EXPECT_EQ(free[0].free, 0);  // more than it holds
    EXPECT_EQ(free[1].name, "Bench west");
    EXPECT_EQ(free[1].free, 60 - 19);
}

}  // namespace
