// SPDX-License-Identifier: MIT
#include <gtest/gtest.h>

#include "core/comparison/comparison.h"
#include "tests/support/builders.h"

namespace {

using support::aBatch;

TEST(Horizon, IsTheQuestionsOwnBeforeAnyOther) {
    const std::vector<core::BatchRecord> batches{aBatch().block("1")};
    const auto horizon =
        core::horizonFor({.horizonDay = 17, .trial = support::tubOrTray}, support::someShelves(), batches);
    EXPECT_EQ(horizon.day, 17);
    EXPECT_EQ(horizon.reason, "set for this comparison");
}

TEST(Horizon, IsTheTrialsWhereATrialIsAsked) {
    const std::vector<core::BatchRecord> batches{aBatch().block("1")};
    const auto horizon = core::horizonFor({.trial = support::tubOrTray}, support::someShelves(), batches);
    EXPECT_EQ(horizon.day, 28);
    EXPECT_EQ(horizon.reason, "the trial's");
}

TEST(Horizon, IsTheLongestUsualTimeOfThePlantsThatAreCompared) {
    const std::vector<core::BatchRecord> both{aBatch().of(support::hebe), aBatch().of(support::deutzia)};
    EXPECT_EQ(core::horizonFor({}, support::someShelves(), both).day, 35);
    EXPECT_EQ(core::horizonFor({.plant = support::deutzia}, support::someShelves(), both).day, 28);
    EXPECT_EQ(core::horizonFor({}, support::someShelves(), std::span(both).last(1)).day, 28);
}

TEST(Horizon, IsTheLogbooksWhereNothingElseSetsOne) {
    core::Shelves shelves = support::someShelves();
    shelves.facts.horizonDay = 42;
    for (core::Plant& plant : shelves.plants) plant.usualRootingDaysHigh.reset();
    const std::vector<core::BatchRecord> batches{aBatch()};
    const auto horizon = core::horizonFor({}, shelves, batches);
    EXPECT_EQ(horizon.day, 42);
    EXPECT_EQ(horizon.reason, "the logbook's");
}

}  // namespace
