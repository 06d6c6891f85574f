// SPDX-License-Identifier: MIT
#include "core/planning/plant_facts.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/comparison/spread.h"
#include "tests/support/builders.h"

namespace {

using core::PlantFacts;
using support::aBatch;
using testing::HasSubstr;

core::Shelves shelvesNaming(std::string botanicalName) {
    core::Shelves shelves = support::someShelves();
    for (core::Plant& plant : shelves.plants)
        if (plant.id == support::hebe) plant.botanicalName = botanicalName, plant.cultivar.clear();
    return shelves;
}

PlantFacts factsOf(const std::string& botanicalName, const std::vector<core::BatchRecord>& batches) {
    const core::Shelves shelves = shelvesNaming(botanicalName);
    return core::plantFactsOf(support::hebe, shelves, batches,
                              core::pooledSpreadOf(batches, shelves.facts.horizonDay, shelves.facts.level));
}

core::BatchRecord watched(int stuck, int rooted) {
    return aBatch().stuck(stuck).looked(14, {.rooted = rooted / 2}).looked(35, {.rooted = rooted - rooted / 2});
}

TEST(PlantFacts, ArePrintedOnesAloneUntilABatchWasWatched) {
    const PlantFacts facts = factsOf("Lavandula angustifolia", {aBatch().stuck(20).build()});
    ASSERT_NE(facts.reference, nullptr);
    EXPECT_EQ(facts.batches, 1);
    EXPECT_EQ(facts.cuttings, 20);
    EXPECT_FALSE(facts.asCounted);
    EXPECT_EQ(facts.records.ownWeight, 0);
    EXPECT_EQ(facts.ownCounts, 0);
    EXPECT_THAT(facts.rateInWords, HasSubstr("by the printed figures alone, until a batch of your own is watched"));
    EXPECT_THAT(facts.daysInWords, HasSubstr("From 10 rooted cuttings on"));
}

TEST(PlantFacts, SayFromWhenOnesOwnWeighMoreAndThatTheyDo) {
    const PlantFacts few = factsOf("Lavandula angustifolia", {watched(4, 2)});
    EXPECT_GT(few.ownCounts, 0);
    EXPECT_LT(few.ownCounts, few.bandCounts);
    EXPECT_LT(few.records.ownWeight, 0.5);
    EXPECT_THAT(few.rateInWords, HasSubstr("weigh more from"));
    const PlantFacts many = factsOf("Lavandula angustifolia", {watched(40, 30), watched(40, 28), watched(40, 33),
                                                               watched(40, 31), watched(40, 25), watched(40, 30)});
    EXPECT_GE(many.ownCounts, many.bandCounts);
    EXPECT_GE(many.records.ownWeight, 0.5);
    EXPECT_THAT(many.rateInWords, HasSubstr("Your own weigh more"));
    EXPECT_EQ(many.rooting.restsOn, core::DaysRestOn::OwnCurve);
    EXPECT_THAT(many.daysInWords, HasSubstr("planned by your own curve"));
}

TEST(PlantFacts, TurnTheWeightIntoCuttings) {
    const PlantFacts facts = factsOf("Lavandula angustifolia", {watched(20, 12), watched(30, 22)});
    EXPECT_NEAR(facts.ownCounts / (facts.ownCounts + facts.bandCounts), facts.records.ownWeight, 1e-12);
    double effective = 0;
    for (const core::BatchCount& batch : facts.records.batches)
        effective += batch.assessed / (1 + (batch.assessed - 1) * facts.records.correlation);
    EXPECT_NEAR(facts.ownCounts, effective, 1e-9) << "cuttings over the design effect of their trays";
}

TEST(PlantFacts, HaveTheIntervalThatTheLogbookSetsWithCounts) {
    const PlantFacts facts = factsOf("Hebe albicans", {watched(20, 12), watched(20, 18)});
    EXPECT_EQ(facts.records.rooted, 30);
    EXPECT_EQ(facts.records.assessed, 40);
    ASSERT_TRUE(facts.asCounted && facts.withSpread);
    EXPECT_LT(facts.asCounted->low, 0.75);
    EXPECT_GT(facts.asCounted->high, 0.75);
    EXPECT_LT(facts.withSpread->low, facts.asCounted->low);
}

TEST(PlantFacts, OfAPlantThatNobodyKnowsSayNothingThatTheyDoNotKnow) {
    const PlantFacts facts = factsOf("Blue Lagoon", {});
    EXPECT_EQ(facts.reference, nullptr);
    EXPECT_EQ(facts.bandCounts, 0);
    EXPECT_THAT(facts.rateInWords, HasSubstr("Neither the table nor your own records"));
    EXPECT_THAT(factsOf("Blue Lagoon", {watched(20, 12)}).rateInWords, HasSubstr("your own records alone"));
}

}  // namespace
