// SPDX-License-Identifier: MIT
#include "core/comparison/comparison.h"

#include <gtest/gtest.h>

#include <random>

#include "core/demo/demo_season.h"
#include "tests/core/comparison_examples.h"

namespace {

using examples::compared;
using support::aBatch;

void expectAddsUp(const core::Comparison& comparison, int stuckInAll) {
    int stuck = 0;
    for (const core::Arm& arm : comparison.arms) {
        EXPECT_EQ(arm.rooted + arm.lost + arm.withdrawn + arm.undecided, arm.stuck) << arm.name;
        EXPECT_LE(arm.rooted + arm.lost, arm.assessed);
        EXPECT_LE(arm.assessed, arm.stuck);
        int losses = 0;
        for (const core::LossByCause& loss : arm.losses) losses += loss.count;
        EXPECT_EQ(losses, arm.lost);
        stuck += arm.stuck;
    }
    EXPECT_EQ(stuck, stuckInAll);
}

TEST(Comparison, CountsEveryCuttingAtTheHorizon) {
    const auto comparison = compared(examples::tubsAndTrays(), {.horizonDay = 21});
    ASSERT_EQ(comparison.arms.size(), 2u);
    const core::Arm &tray = comparison.arms[0], &tub = comparison.arms[1];  // most stuck first
    EXPECT_EQ(tray.name, "media tray");
    EXPECT_EQ(tray.stuck, 68);
    EXPECT_EQ(tray.rooted, 40);
    EXPECT_EQ(tray.lost, 4);
    EXPECT_EQ(tray.withdrawn, 2);
    EXPECT_EQ(tray.undecided, 22);
    EXPECT_EQ(tray.assessed, 59);
    EXPECT_EQ(tray.batches, 3);
    EXPECT_EQ(tray.stations, 2);
    EXPECT_EQ(tub.rooted, 30);
    EXPECT_EQ(tub.assessed, 53);
    EXPECT_DOUBLE_EQ(*tub.rate, 30.0 / 53);
    expectAddsUp(comparison, 134);
}

TEST(Comparison, GivesTheBatchTestOfAnotherProgram) {
    // R 4.2.2: lm(rate ~ arm, weights = n / (1 + (n - 1) * r)) of the rates 14/20, 11/18, 15/21 and 14/23, 11/14, 5/16, the more
    // cautious of r = 0 and 0.1.
    const auto comparison = compared(examples::tubsAndTrays(), {.horizonDay = 21});
    const core::Pair& pair = comparison.pairs.front();
    ASSERT_TRUE(pair.batchRatesP.has_value());
    EXPECT_NEAR(*pair.batchRatesP, 0.4725899295832695, 1e-9);
    ASSERT_TRUE(pair.difference && pair.difference->withSpread);
    EXPECT_NEAR(pair.difference->withSpread->low, -0.27286060135196794, 1e-8);
    EXPECT_NEAR(pair.difference->withSpread->high, 0.49072772212976584, 1e-8);
    EXPECT_FALSE(pair.batchPermutationP.has_value());  // from four batches an arm
    EXPECT_NEAR(pair.difference->value, 40.0 / 59 - 30.0 / 53, 1e-15);
}

TEST(Comparison, GivesBartlettsFiguresPooledOverTheLengthOfHisRootCuttings) {
    // Bartlett (1935), J. R. Stat. Soc. Suppl. 2, 248-252; pooled figures: reference cases mh-or-plum-by-length, cmh-, mh-rd- and
    // bd-plum-by-length.
    const auto comparison = compared(examples::rootCuttingsOf1935(), {.factor = core::Factor::Treatment});
    ASSERT_EQ(comparison.pairs.size(), 1u);
    const core::Pair& pair = comparison.pairs.front();
    const bool isAtOnceFirst = comparison.arms[0].name == "Nothing";
    const core::Pooled& pooled = pair.pooled;
    ASSERT_EQ(pooled.strata, 2);
    EXPECT_NEAR(isAtOnceFirst ? *pooled.oddsRatio : 1 / *pooled.oddsRatio, 4.17738617049826, 1e-9);
    EXPECT_NEAR(isAtOnceFirst ? *pooled.riskDifference : -*pooled.riskDifference, 0.308333333333333, 1e-12);
    EXPECT_NEAR(pooled.cmhP / 1.43548031960122e-23, 1, 1e-6);
    EXPECT_NEAR(*pooled.agreementP, 0.131761973990824, 1e-9);
    EXPECT_EQ(comparison.arms[0].rooted + comparison.arms[1].rooted, 156 + 107 + 84 + 31);
    EXPECT_EQ(pair.verdict, core::Verdict::CannotTellMethodFromStation);  // no station is recorded
    expectAddsUp(comparison, 960);
}

TEST(Comparison, AddsUpOverADemoSeasonByEveryFactorAndAtAnyHorizon) {
    constexpr std::uint32_t seed = 3;
    SCOPED_TRACE(testing::Message() << "seed " << seed);
    const auto records = core::demoSeason({.batches = 24, .seed = seed, .today = support::today()});
    int stuck = 0;
    for (const auto& record : records.batches) stuck += record.batch.stuck;
    for (const auto factor :
         {core::Factor::Method, core::Factor::Treatment, core::Factor::Medium, core::Factor::CuttingKind})
        for (const int day : {1, 13, 28, 400})
            expectAddsUp(compared(records.batches,
                                  {.factor = factor, .horizonDay = day, .bootstrapReplicates = 0, .permutations = 0},
                                  records.shelves),
                         stuck);
}

TEST(Comparison, PutsSpeciesBesideEachOther) {
    const auto batches =
        examples::together({examples::batchesAt(support::tubNorth, {10, 12}),
                            examples::batchesAt(support::benchWest, {14}),
                            {aBatch().of(support::deutzia).at(support::benchEast).stuck(20).looked(28, {9})}});
    const auto comparison = compared(batches);
    const auto& species = comparison.pairs.front().bySpecies;
    ASSERT_EQ(species.size(), 2u);
    EXPECT_EQ(species[0].species, "Deutzia gracilis 'Nikko'");
    EXPECT_FALSE(species[0].difference.has_value());  // in one arm only
    EXPECT_EQ(species[1].species, "Hebe albicans");
    const bool isTubFirst = comparison.arms[0].name == "aerated water";
    EXPECT_NEAR(*species[1].difference, (isTubFirst ? 1 : -1) * (22.0 / 40 - 14.0 / 20), 1e-15);
}

TEST(Comparison, KeepsToItsPlantAndItsTrial) {
    auto batches = examples::tubsAndTrays();
    batches.push_back(aBatch().of(support::deutzia).stuck(50).looked(28, {9}));
    batches.push_back(aBatch().block("1").stuck(30).looked(28, {9}));
    EXPECT_EQ(compared(batches, {.plant = support::deutzia}).arms.front().stuck, 50);
    const auto ofTrial = compared(batches, {.trial = support::tubOrTray});
    EXPECT_EQ(ofTrial.arms.front().stuck, 30);
    EXPECT_EQ(ofTrial.horizonReason, "the trial's");
}

TEST(Comparison, NamesWhatIsNotRecorded) {
    const std::vector<core::BatchRecord> batches{aBatch().treated({}).looked(28, {9}),
                                                 aBatch().treated(support::weakGel).looked(28, {9})};
    const auto comparison = compared(batches, {.factor = core::Factor::Treatment});
    EXPECT_EQ(comparison.arms[0].name, "IBA gel 1000");
    EXPECT_EQ(comparison.arms[1].name, "not recorded");
}

TEST(Comparison, AnswersWithOneArmOrNone) {
    const auto one = compared(examples::batchesAt(support::tubNorth, {10, 12}));
    EXPECT_TRUE(one.pairs.empty());
    EXPECT_NE(one.inWords.find("only one method"), std::string::npos) << one.inWords;
    const auto none = compared({});
    EXPECT_TRUE(none.arms.empty());
    EXPECT_EQ(none.inWords, "There are no batches to compare.");
}

TEST(Comparison, AnswersWhereNothingIsKnownYet) {
    const auto comparison = compared({aBatch().at(support::tubNorth), aBatch().at(support::benchWest)});
    EXPECT_FALSE(comparison.arms[0].rate.has_value());
    EXPECT_FALSE(comparison.pairs.front().difference.has_value());
    EXPECT_NE(comparison.inWords.find("too early"), std::string::npos) << comparison.inWords;
    EXPECT_EQ(comparison.pairs.front().boschloo, 1);
}

TEST(Comparison, IsTheSameTwice) {
    const auto batches = examples::tubsAndTrays();
    const auto first = compared(batches), second = compared(batches);
    EXPECT_EQ(first.pairs.front().curvesP, second.pairs.front().curvesP);
    for (std::size_t i = 0; i < first.arms[0].rootedByDay.size(); ++i)
        EXPECT_EQ(first.arms[0].rootedByDay[i].band->high, second.arms[0].rootedByDay[i].band->high);
}

TEST(Comparison, DoesNotDependOnTheOrderOfTheRecords) {
    auto batches = examples::tubsAndTrays();
    const auto before = compared(batches);
    std::reverse(batches.begin(), batches.end());
    const auto after = compared(batches);
    EXPECT_EQ(before.pairs.front().difference->value, after.pairs.front().difference->value);
    EXPECT_EQ(before.inWords, after.inWords);
    EXPECT_NEAR(before.arms[0].rootedByDay[1].share, after.arms[0].rootedByDay[1].share, 1e-9);
}

TEST(Comparison, StopsWhenAsked) {
    std::stop_source source;
    source.request_stop();
    const auto batches = examples::tubsAndTrays();
    const auto comparison = core::compare({}, support::someShelves(), batches, source.get_token());
    ASSERT_TRUE(comparison.has_value());
    EXPECT_TRUE(comparison->pairs.empty());
}

TEST(Comparison, RefusesADayBelowOneAndALevelThatIsNone) {
    const auto batches = examples::tubsAndTrays();
    const auto refused = core::compare({.horizonDay = 0, .level = 95.0}, support::someShelves(), batches);
    ASSERT_FALSE(refused.has_value());
    ASSERT_EQ(refused.error().size(), 2u);
    EXPECT_EQ(refused.error()[0].sentence, "At day is 0; a comparison is decided at day 1 after sticking or later.");
    EXPECT_EQ(refused.error()[1].value, "95");
}

TEST(Comparison, LeavesTheLongTestsOutOfHugeArmsAndSaysSo) {
    const auto batches = std::vector<core::BatchRecord>{aBatch().at(support::tubNorth).stuck(3000).looked(28, {1500}),
                                                        aBatch().at(support::benchWest).stuck(3000).looked(28, {1600})};
    EXPECT_TRUE(compared(batches).pairs.front().exactTestsLeftOut);
    EXPECT_FALSE(compared(examples::tubsAndTrays()).pairs.front().exactTestsLeftOut);
}

TEST(Comparison, GivesTheSpreadOverArmsAndPlants) {
    const auto spread = compared(examples::together({examples::batchesAt(support::tubNorth, {2, 18, 10, 5}),
                                                     examples::batchesAt(support::benchWest, {19, 3, 12, 9})}))
                            .spread;
    EXPECT_EQ(spread.batches, 8);
    EXPECT_TRUE(spread.isFromRecords);
    EXPECT_GT(spread.intraclassCorrelation, 0.1);
    EXPECT_NEAR(spread.designEffect, 1 + 19 * spread.intraclassCorrelation, 1e-12);
    EXPECT_FALSE(compared({aBatch().looked(28, {4})}).spread.isFromRecords);
}

}  // namespace
