// SPDX-License-Identifier: MIT
#include "core/comparison/cautions.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "tests/core/comparison_examples.h"

namespace {

using examples::batchesAt;
using examples::compared;
using examples::together;
using support::aBatch;
using support::benchWest;
using support::tubNorth;
using testing::Contains;
using testing::HasSubstr;
using testing::Not;

TEST(Cautions, SayThatMethodAndStationAreOne) {
    EXPECT_THAT(compared(together({batchesAt(tubNorth, {9, 9}), batchesAt(benchWest, {9, 9})})).cautions,
                Contains(HasSubstr("can't be told apart")));
    EXPECT_THAT(compared(examples::tubsAndTrays()).cautions, Not(Contains(HasSubstr("can't be told apart"))));
}

TEST(Cautions, CountThoseWhoseFateIsNotKnown) {
    const auto cautions = compared(examples::tubsAndTrays(), {.horizonDay = 21}).cautions;
    EXPECT_THAT(cautions, Contains(HasSubstr("Of 66 cuttings of aerated water, 13 have no known fate at day 21")));
    EXPECT_THAT(cautions, Contains(HasSubstr("22 of all 134 cuttings are counted but not in the rates")));
    EXPECT_THAT(cautions, Contains(HasSubstr("3 cuttings were withdrawn by day 21")));
}

TEST(Cautions, NoticeDifferentPlants) {
    const std::vector<core::BatchRecord> batches{aBatch().at(tubNorth).looked(28, {9}),
                                                 aBatch().at(benchWest).of(support::deutzia).looked(28, {9})};
    EXPECT_THAT(compared(batches).cautions,
                Contains(HasSubstr("Not every plant was in every arm: 2 of 2 plants were not")));
    EXPECT_THAT(compared(examples::tubsAndTrays()).cautions, Not(Contains(HasSubstr("Not every plant"))));
}

TEST(Cautions, AskWhetherChanceDecided) {
    EXPECT_THAT(compared(examples::tubsAndTrays()).cautions, Contains(HasSubstr("is it recorded that chance decided")));
    const std::vector<core::BatchRecord> dealt{aBatch().at(tubNorth).block("1").looked(28, {9}),
                                               aBatch().at(benchWest).block("1").looked(28, {9})};
    EXPECT_THAT(compared(dealt).cautions, Not(Contains(HasSubstr("chance decided"))));
    const std::vector<core::BatchRecord> half{aBatch().at(tubNorth).block("1").looked(28, {9}),
                                              aBatch().at(benchWest).looked(28, {9})};
    EXPECT_THAT(compared(half).cautions,
                Contains(HasSubstr("For 1 of 2 batches it is not recorded that chance decided")));
}

TEST(Cautions, NoticeThatOneArmIsLookedAtMoreOften) {
    const std::vector<core::BatchRecord> batches{
        aBatch().at(tubNorth).looked(4).looked(8, {4}).looked(12).looked(28, {2}),
        aBatch().at(benchWest).looked(28, {9})};
    EXPECT_THAT(compared(batches).cautions,
                Contains(HasSubstr("aerated water was looked at every 7 days on average, media tray every 28 days")));
    EXPECT_THAT(compared(together({batchesAt(tubNorth, {9}), batchesAt(benchWest, {9})})).cautions,
                Not(Contains(HasSubstr("looked at every"))));
}

TEST(Cautions, SayOfFewCuttingsThatTheyAreFew) {
    const std::vector<core::BatchRecord> batches{aBatch().at(tubNorth).stuck(3).looked(28, {1}),
                                                 aBatch().at(benchWest).looked(28, {9})};
    EXPECT_THAT(compared(batches).cautions,
                Contains(HasSubstr("Only 3 of the cuttings of aerated water have a known fate")));
}

TEST(Cautions, SayWhereRecordsComeFrom) {
    core::Shelves shelves = support::someShelves();
    shelves.facts.isInvented = true;
    shelves.facts.citation = "Someone (1935).";
    const auto cautions = compared(examples::tubsAndTrays(), {}, shelves).cautions;
    EXPECT_THAT(cautions, Contains(HasSubstr("invented")));
    EXPECT_THAT(cautions, Contains(HasSubstr("Someone (1935).")));
    EXPECT_THAT(compared(examples::tubsAndTrays()).cautions, Not(Contains(HasSubstr("invented"))));
}

}  // namespace
