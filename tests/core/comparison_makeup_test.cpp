// SPDX-License-Identifier: MIT
// A comparison carries what its figures were worked out from, so that anybody can work them out again.
#include <gtest/gtest.h>

#include <cmath>

#include "core/comparison/batch_summary.h"
#include "tests/core/comparison_examples.h"

namespace {

using examples::batchesAt;
using examples::together;
using support::aBatch;

TEST(ComparisonMakeup, CountsOfBatchesAddUpToTheArm) {
    for (const core::Arm& arm : examples::compared(examples::tubsAndTrays()).arms) {
        int rooted = 0, assessed = 0;
        for (const core::BatchCount& batch : arm.counted) {
            EXPECT_FALSE(batch.code.empty());
            rooted += batch.rooted;
            assessed += batch.assessed;
        }
        EXPECT_EQ(rooted, arm.rooted);
        EXPECT_EQ(assessed, arm.assessed);
    }
}

TEST(ComparisonMakeup, ABatchOfUnknownFateIsNotAmongThem) {
    const auto comparison = examples::compared({aBatch(), aBatch().looked(28, {4, 2})});
    ASSERT_EQ(comparison.arms.size(), 1U);
    ASSERT_EQ(comparison.arms.front().counted.size(), 1U);
    EXPECT_EQ(comparison.arms.front().counted.front().rooted, 4);
}

TEST(ComparisonMakeup, StepsOfTheCurveRiseToItsEnd) {
    for (const core::Arm& arm : examples::compared(examples::tubsAndTrays()).arms) {
        int cuttings = 0;
        for (const core::KnownDays& row : arm.makeup.known) {
            cuttings += row.cuttings;
            EXPECT_EQ(std::isinf(row.by), row.fate == core::KnownDays::Fate::Undecided);
        }
        EXPECT_EQ(cuttings, arm.stuck);
        double rooted = 0, lost = 0;
        for (const core::CurveStep& step : arm.makeup.rooted) rooted += step.share;
        for (const core::CurveStep& step : arm.makeup.lost) lost += step.share;
        EXPECT_NEAR(rooted, arm.rootedByDay.back().share, 1e-9);
        EXPECT_NEAR(lost, arm.lostByDay.back().share, 1e-9);
    }
}

TEST(ComparisonMakeup, StrataAreThePlantsAndBlocksWithBothArms) {
    const auto comparison =
        examples::compared({aBatch().at(support::tubNorth).of(support::hebe).looked(28, {9, 15}),
                            aBatch().at(support::benchWest).of(support::hebe).looked(28, {12, 12}),
                            aBatch().at(support::benchWest).of(support::deutzia).looked(28, {20, 4})});
    ASSERT_EQ(comparison.pairs.size(), 1U);
    const core::Pooled& pooled = comparison.pairs.front().pooled;
    ASSERT_EQ(pooled.counts.size(), 1U);
    EXPECT_EQ(pooled.strata, 1);
    EXPECT_EQ(pooled.counts.front().name, "Hebe albicans");
    EXPECT_EQ(pooled.counts.front().firstRooted + pooled.counts.front().secondRooted, 21);
}

TEST(ComparisonMakeup, HowFarTheCurvesAreApartGoesWithTheirTest) {
    const auto several = examples::compared(
        together({batchesAt(support::tubNorth, {5, 9, 7}), batchesAt(support::benchWest, {15, 18, 12})}));
    const core::Pair& pair = several.pairs.front();
    ASSERT_TRUE(pair.curvesP && pair.curvesApart);
    EXPECT_TRUE(pair.curvesApart->isExact);
    EXPECT_EQ(pair.curvesApart->dealings, 20);  // choose(6, 3)
    EXPECT_EQ(pair.curvesApart->until, 28);
    EXPECT_GT(pair.curvesApart->area, 0);
    const auto single =
        examples::compared(together({batchesAt(support::tubNorth, {5}), batchesAt(support::benchWest, {15})}));
    EXPECT_EQ(single.pairs.front().curvesP.has_value(), single.pairs.front().curvesApart.has_value());
}

TEST(ComparisonMakeup, SpreadDosesAndRegressionNameTheirBatches) {
    const auto comparison = examples::compared(
        together({batchesAt(support::tubNorth, {5, 9, 7}), batchesAt(support::benchWest, {15, 18, 12})}));
    ASSERT_EQ(comparison.spread.likeBatches.size(), 2U);
    EXPECT_EQ(comparison.spread.likeBatches.front().size(), 3U);
    ASSERT_EQ(comparison.goesWith.rows.size(), 6U);
    EXPECT_EQ(comparison.goesWith.rows.front().values.size(), comparison.goesWith.associations.size());
}

TEST(ComparisonMakeup, ADoseSeriesNamesItsBatches) {
    core::Shelves shelves = support::someShelves();
    core::Treatment strong = *core::find(shelves.treatments, support::weakGel);
    strong.id = core::TreatmentId{699};
    strong.name = "IBA gel 2000";
    strong.auxins.front().milligramsPerLitre = 2000;
    shelves.treatments.push_back(strong);
    core::ComparisonQuestion question;
    question.factor = core::Factor::Treatment;
    const auto comparison =
        examples::compared({aBatch().looked(28, {5, 5}), aBatch().treated(support::weakGel).looked(28, {9, 5}),
                            aBatch().treated(strong.id).looked(28, {12, 5})},
                           question, shelves);
    ASSERT_EQ(comparison.doses.size(), 1U);
    const std::vector<core::DosedBatch>& batches = comparison.doses.front().batches;
    ASSERT_EQ(batches.size(), 3U);
    EXPECT_EQ(batches.front().milligramsPerLitre, 0);
    EXPECT_EQ(batches.back().milligramsPerLitre, 2000);
    EXPECT_EQ(batches.back().rooted, 12);
}

TEST(ComparisonMakeup, ABatchNamesThePastThatItIsHeldAgainst) {
    auto season = batchesAt(support::tubNorth, {5, 9});
    season.push_back(aBatch().stuckOn(core::addDays(support::stickingDay(), 7)).stuck(20).looked(28, {7, 13}));
    const auto summary = core::summaryOf(season.back(), support::someShelves(), season, support::today());
    ASSERT_TRUE(summary.againstPast);
    EXPECT_EQ(static_cast<int>(summary.againstPast->past.size()), summary.againstPast->pastBatches);
    EXPECT_EQ(summary.againstPast->correlations.size(), 12U);
    EXPECT_FALSE(summary.makeup.known.empty());
}

}  // namespace
