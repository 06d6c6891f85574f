// SPDX-License-Identifier: MIT
#include "core/comparison/spread.h"

#include <gtest/gtest.h>

#include "tests/core/comparison_examples.h"

namespace {

using examples::batchesAt;
using examples::together;

TEST(Spread, IsJudgedByTheWholeLogbookNotOnlyByThePlantCompared) {
    std::vector<core::BatchRecord> batches =
        together({batchesAt(support::tubNorth, {15, 14, 16}), batchesAt(support::benchWest, {12, 13, 12})});
    for (const int rooted : {2, 19, 5, 18, 1, 20})
        batches.push_back(
            support::aBatch().of(support::deutzia).stuck(20).looked(28, {.rooted = rooted, .lost = 20 - rooted}));
    const core::Comparison all = examples::compared(batches),
                           one = examples::compared(batches, {.plant = support::hebe});
    EXPECT_EQ(one.spread.intraclassCorrelation, all.spread.intraclassCorrelation);
    EXPECT_EQ(one.spread.batches, 12);
    EXPECT_GT(one.spread.intraclassCorrelation, 0.15);
}

TEST(Spread, IsTheUsualOneWhereNoTwoBatchesAreAlike) {
    const core::Spread spread =
        examples::compared(together({batchesAt(support::tubNorth, {15}), batchesAt(support::benchWest, {12})})).spread;
    EXPECT_FALSE(spread.isFromRecords);
    EXPECT_EQ(spread.weightOfRecords, 0);
    EXPECT_GT(spread.intraclassCorrelation, 0);
}

TEST(Spread, IsBorrowedByAnArmThatRootedAll) {
    const core::Comparison comparison = examples::compared(
        together({batchesAt(support::tubNorth, {20, 20, 20}), batchesAt(support::benchWest, {12, 17, 9})}));
    for (const core::Arm& arm : comparison.arms) {
        ASSERT_TRUE(arm.withSpread) << arm.name;
        EXPECT_EQ(arm.isSpreadBorrowed, arm.rooted == arm.assessed) << arm.name;
        EXPECT_LE(arm.withSpread->low, arm.asCounted->low) << arm.name;
    }
}

TEST(Spread, IsNotGivenToAnArmOfOneBatch) {
    const core::Comparison comparison =
        examples::compared(together({batchesAt(support::tubNorth, {20}), batchesAt(support::benchWest, {12, 17, 9})}));
    for (const core::Arm& arm : comparison.arms) EXPECT_EQ(arm.withSpread.has_value(), arm.batches > 1) << arm.name;
}

TEST(Spread, WidensThePooledAnswer) {
    std::vector<core::BatchRecord> batches;
    for (const core::PlantId plant : {support::hebe, support::deutzia})
        for (const core::StationId station :
             {support::tubNorth, support::tubSouth, support::benchWest, support::benchEast})
            for (const int rooted : {4, 18})
                batches.push_back(support::aBatch().of(plant).at(station).stuck(20).looked(
                    28, {.rooted = rooted, .lost = 20 - rooted}));
    const core::Pooled pooled = examples::compared(batches).pairs.front().pooled;
    EXPECT_LT(pooled.riskDifferenceWithSpread.low, pooled.riskDifferenceLimits.low);
    EXPECT_GT(pooled.riskDifferenceWithSpread.high, pooled.riskDifferenceLimits.high);
    EXPECT_LT(pooled.oddsRatioWithSpread.low, pooled.oddsRatioLimits.low);
    EXPECT_GT(pooled.oddsRatioWithSpread.high, pooled.oddsRatioLimits.high);
}

TEST(CurveShare, IsReadOffTheCurveAtTheHorizonBetweenTwoLooks) {
    // Ten of twenty rooted between day 21 and day 35: by day 28 half of them, if any day is as likely.
    const auto batch = support::aBatch().stuck(20).looked(21).looked(35, {.rooted = 10});
    const core::Comparison comparison = examples::compared({batch});
    ASSERT_TRUE(comparison.arms.front().curveShare);
    EXPECT_NEAR(*comparison.arms.front().curveShare, 0.25, 1e-6);
    EXPECT_FALSE(examples::compared({support::aBatch().looked(21, {.rooted = 4})}).arms.front().curveShare)
        << "nobody looked that late";
}

}  // namespace
