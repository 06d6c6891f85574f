// SPDX-License-Identifier: MIT
// Cases worked out in docs/costs.md; prices and batches are invented.
#include "core/money/worth_it.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <cmath>

#include "core/comparison/spread.h"
#include "core/money/worth_words.h"
#include "stats/overdispersion/rate_law.h"
#include "tests/core/money_examples.h"

namespace {

using core::PriceBasis;
using core::WorthVerdict;
using examples::dayAfterSticking;
using examples::farBelowACent;
using examples::ownedBy;
using examples::worthOf;
using support::aBatch;
using testing::ElementsAre;
using testing::HasSubstr;
using testing::IsEmpty;

/// `rooted` of 20 in each, one after the other at the two stations of a method, all decided on day 28.
std::vector<core::BatchRecord> batchesOf(core::MethodId method, const std::vector<int>& rooted,
                                         core::PlantId plant = support::hebe) {
    const bool isTub = method == support::aeratedWater;
    std::vector<core::BatchRecord> batches;
    for (std::size_t i = 0; i < rooted.size(); ++i)
        batches.push_back(aBatch()
                              .of(plant)
                              .at(i % 2 == 0 ? (isTub ? support::tubNorth : support::benchWest)
                                             : (isTub ? support::tubSouth : support::benchEast))
                              .stuck(20)
                              .looked(14, {.rooted = rooted[i] / 2})
                              .looked(28, {.rooted = rooted[i] - rooted[i] / 2, .lost = 20 - rooted[i]}));
    return batches;
}

/// So much for each cutting and nothing else.
core::Price ofACutting(double amount, core::MethodId method) {
    return ownedBy(examples::usedUp("all of it", amount, 1, PriceBasis::Cutting), method);
}

core::Records logbook(std::vector<std::vector<core::BatchRecord>> lists, std::vector<core::Price> prices) {
    std::vector<core::BatchRecord> all;
    for (const auto& list : lists) all.insert(all.end(), list.begin(), list.end());
    core::Records records = support::recordsOf(std::move(all));
    records.shelves.prices = std::move(prices);
    return records;
}

core::Records tubsAgainstTrays(const std::vector<int>& tubs, const std::vector<int>& trays, double tub, double tray) {
    return logbook({batchesOf(support::aeratedWater, tubs), batchesOf(support::mediaTray, trays)},
                   {ofACutting(tub, support::aeratedWater), ofACutting(tray, support::mediaTray)});
}

TEST(WorthIt, ARootedPlantCostsWhatItsCuttingsCostOverTheStrikeRate) {
    const core::Worth worth = worthOf(tubsAgainstTrays({16, 14, 15}, {10, 8, 12}, 0.30, 0.20));
    ASSERT_EQ(worth.pairs.size(), 1U);
    const core::WorthOfPair& pair = worth.pairs.front();
    EXPECT_EQ(pair.dear.method, support::aeratedWater);
    EXPECT_NEAR(pair.dear.perCutting.of(core::CostPart::UsedUp), 0.30, farBelowACent);
    EXPECT_NEAR(pair.dear.perRooted.value.value(), 0.30 / 0.75, farBelowACent);
    EXPECT_NEAR(pair.cheap.perRooted.value.value(), 0.20 / 0.50, farBelowACent);
    EXPECT_NEAR(pair.dearStrikeToTie.value(), 0.75, farBelowACent);
    EXPECT_NEAR(pair.dearCostToTie.value(), 0.30, farBelowACent);
    EXPECT_NEAR(pair.chanceDearPays, 0.5, 0.05);
    EXPECT_GT(pair.chanceDearRootsMore, 0.95);
    EXPECT_EQ(pair.verdict, WorthVerdict::CannotTellYet);
    EXPECT_THAT(pair.inWords, HasSubstr("A rooted plant costs 0.40 EUR by aerated water"));
    EXPECT_THAT(pair.inWords, HasSubstr("45 of 60 rooted in 3 batches"));
}

TEST(WorthIt, TheIntervalIsThatOfTheStrikeRateTurnedRound) {
    const core::Records records = tubsAgainstTrays({16, 14, 15}, {10, 8, 12}, 0.30, 0.20);
    const core::WorthOfMethod tub = worthOf(records).pairs.front().dear;
    const stats::Interval rate =
        stats::RateLaw("test", stats::ratePosterior({.batches = {{16, 20}, {14, 20}, {15, 20}},
                                                     .spread = core::pooledSpreadOf(records.batches, 28, 0.95).law},
                                                    192))
            .interval(0.95);
    EXPECT_NEAR(tub.perRooted.limits.low, 0.30 / rate.high, farBelowACent);
    EXPECT_NEAR(tub.perRooted.limits.high, 0.30 / rate.low, farBelowACent);
    EXPECT_LT(tub.strike.limits.low, 0.62);  // Wilson's, as if cuttings of one tub had luck of their own: 0.63 to 0.84
    EXPECT_GT(tub.strike.limits.high, 0.84);
}

TEST(WorthIt, WhereNoneRootedThereIsNoCostPerPlantButABound) {
    const core::Worth worth = worthOf(tubsAgainstTrays({0, 0, 0}, {10, 8, 12}, 0.30, 0.20));
    const core::WorthOfMethod& tub = worth.pairs.front().dear;
    EXPECT_FALSE(tub.perRooted.value);
    EXPECT_NEAR(tub.perRooted.limits.low, 0.30 / tub.strike.limits.high, farBelowACent);
    EXPECT_TRUE(std::isinf(tub.perRooted.limits.high));
    EXPECT_THAT(worth.inWords, HasSubstr("By aerated water none rooted, so there is no cost per plant; it is "));
    EXPECT_EQ(worth.pairs.front().verdict, WorthVerdict::BetterAndCheaper);
    for (const double figure : {worth.pairs.front().chanceDearPays, tub.perRooted.limits.low})
        EXPECT_TRUE(std::isfinite(figure));
}

TEST(WorthIt, WhereNeitherRootedNothingIsDividedByZero) {
    const core::WorthOfPair pair = worthOf(tubsAgainstTrays({0, 0, 0}, {0, 0, 0}, 0.30, 0.20)).pairs.front();
    EXPECT_FALSE(pair.dearStrikeToTie);
    EXPECT_FALSE(pair.dearCostToTie);
    EXPECT_GT(pair.chanceDearPays, 0.1);
    EXPECT_LT(pair.chanceDearPays, 0.5);
}

TEST(WorthIt, WhereAllRootedTheIntervalHoldsTheCostItself) {
    const core::WorthOfMethod tub = worthOf(tubsAgainstTrays({20, 20, 20}, {10, 8, 12}, 0.30, 0.20)).pairs.front().dear;
    EXPECT_NEAR(tub.perRooted.value.value(), 0.30, farBelowACent);
    EXPECT_NEAR(tub.perRooted.limits.low, 0.30, farBelowACent);
}

TEST(WorthIt, SaysOfWhichMethodNothingIsPriced) {
    core::Records records = tubsAgainstTrays({16, 14, 15}, {10, 8, 12}, 0.30, 0.20);
    records.shelves.prices.pop_back();
    const core::Worth half = worthOf(records);
    EXPECT_EQ(half.pairs.front().verdict, WorthVerdict::NothingPriced);
    EXPECT_EQ(half.inWords, "Nothing is priced for media tray, so what a rooted plant costs by it isn't known.");
    records.shelves.prices.clear();
    EXPECT_EQ(worthOf(records).pairs.front().verdict, WorthVerdict::NothingPriced);
}

TEST(WorthIt, FindsThatTheDearerPays) {
    const core::WorthOfPair pair =
        worthOf(tubsAgainstTrays({18, 19, 17, 18, 19}, {7, 8, 6, 9, 8}, 0.30, 0.25)).pairs.front();
    EXPECT_EQ(pair.verdict, WorthVerdict::DearerPays);
    EXPECT_GT(pair.chanceDearPays, 0.99);
    EXPECT_FALSE(pair.moreCuttings);
    EXPECT_THAT(pair.inWords, HasSubstr("So aerated water is worth it"));
}

TEST(WorthIt, FindsThatTheCheaperStaysCheaperThoughTheDearerRootsMore) {
    const core::WorthOfPair pair =
        worthOf(tubsAgainstTrays({18, 19, 17, 18, 19}, {14, 15, 13, 14, 15}, 1.30, 0.25)).pairs.front();
    EXPECT_EQ(pair.verdict, WorthVerdict::CheaperPays);
    EXPECT_FALSE(pair.dearStrikeToTie);  // it would have to root more than all
    EXPECT_THAT(pair.inWords, HasSubstr("So aerated water is not worth it"));
}

TEST(WorthIt, FindsThatOneIsSimplyBetterAndCheaper) {
    const core::WorthOfPair pair =
        worthOf(tubsAgainstTrays({7, 8, 6, 9, 8}, {18, 19, 17, 18, 19}, 0.30, 0.25)).pairs.front();
    EXPECT_EQ(pair.verdict, WorthVerdict::BetterAndCheaper);
    EXPECT_THAT(pair.inWords, HasSubstr("media tray is the better and the cheaper one"));
}

TEST(WorthIt, GivesNoVerdictBelowThreeBatchesOrWhereAMethodStoodAtOneStation) {
    const core::WorthOfPair few = worthOf(tubsAgainstTrays({18, 19}, {7, 8, 6, 9}, 0.30, 0.25)).pairs.front();
    EXPECT_EQ(few.verdict, WorthVerdict::TooFew);
    EXPECT_THAT(few.inWords, HasSubstr("three of each at least"));
    core::Records records = tubsAgainstTrays({18, 19, 18, 17}, {7, 8, 6, 9}, 0.30, 0.25);
    for (core::BatchRecord& record : records.batches)
        if (record.batch.method == support::aeratedWater) record.batch.station = support::tubNorth;
    const core::WorthOfPair alone = worthOf(records).pairs.front();
    EXPECT_EQ(alone.verdict, WorthVerdict::CannotTellMethodFromStation);
    EXPECT_THAT(alone.inWords, HasSubstr("aerated water stood at one station only, so the method and the station can't "
                                         "be told apart"));
}

TEST(WorthIt, ComparesOverSeveralPlantsInTheMixOfBothMethods) {
    // Tubs had the easy plant more often: 8 of 10 batches; both root alike, plant by plant.
    const core::Records records =
        logbook({batchesOf(support::aeratedWater, {18, 18, 18, 18, 18, 18, 18, 18}, support::hebe),
                 batchesOf(support::aeratedWater, {8, 8}, support::deutzia),
                 batchesOf(support::mediaTray, {18, 18}, support::hebe),
                 batchesOf(support::mediaTray, {8, 8, 8, 8, 8, 8, 8, 8}, support::deutzia)},
                {ofACutting(0.30, support::aeratedWater), ofACutting(0.30, support::mediaTray)});
    const core::Worth worth = worthOf(records);
    const core::WorthOfPair& pair = worth.pairs.front();
    EXPECT_THAT(pair.plants, ElementsAre("Deutzia gracilis 'Nikko'", "Hebe albicans"));
    EXPECT_NEAR(pair.dear.strike.rate, 0.65, farBelowACent);  // half of each plant: 0.9 and 0.4
    EXPECT_NEAR(pair.cheap.strike.rate, 0.65, farBelowACent);
    EXPECT_NEAR(pair.chanceDearPays, 0.5, 0.05);
    EXPECT_NEAR(worth.methods[0].strike.rate, 0.80, farBelowACent);  // as stuck
    EXPECT_NEAR(worth.methods[1].strike.rate, 0.50, farBelowACent);
    ASSERT_EQ(worth.byPlant.size(), 4U);
    EXPECT_EQ(worth.byPlant[0].plantName, "Deutzia gracilis 'Nikko'");
    EXPECT_NEAR(worth.byPlant[0].perRooted.value.value(), 0.30 / 0.40, farBelowACent);
}

TEST(WorthIt, LeavesOutOfAPairWhatOnlyOneMethodHas) {
    const core::Records records =
        logbook({batchesOf(support::aeratedWater, {15, 16, 14}, support::hebe),
                 batchesOf(support::mediaTray, {9, 8, 10}, support::hebe),
                 batchesOf(support::mediaTray, {2, 1, 2}, support::deutzia)},
                {ofACutting(0.30, support::aeratedWater), ofACutting(0.25, support::mediaTray)});
    const core::WorthOfPair pair = worthOf(records).pairs.front();
    EXPECT_THAT(pair.plants, ElementsAre("Hebe albicans"));
    EXPECT_THAT(pair.leftOut, ElementsAre("Deutzia gracilis 'Nikko'"));
    EXPECT_NEAR(pair.cheap.strike.rate, 27.0 / 60, farBelowACent);
    EXPECT_THAT(pair.inWords, HasSubstr("Compared within Hebe albicans; Deutzia gracilis 'Nikko' is left out"));
    const core::Worth hebeOnly = worthOf(records, {.plant = support::hebe});
    EXPECT_THAT(hebeOnly.byPlant, IsEmpty());
    EXPECT_THAT(hebeOnly.pairs.front().leftOut, IsEmpty());
}

TEST(WorthIt, SaysWhereNoPlantWasRootedByBoth) {
    const core::Worth worth =
        worthOf(logbook({batchesOf(support::aeratedWater, {15, 16, 14}, support::hebe),
                         batchesOf(support::mediaTray, {2, 1, 2}, support::deutzia)},
                        {ofACutting(0.30, support::aeratedWater), ofACutting(0.25, support::mediaTray)}));
    EXPECT_EQ(worth.pairs.front().verdict, WorthVerdict::TooFew);
    EXPECT_THAT(worth.inWords, HasSubstr("No plant has costs and a strike rate by both methods."));
}

TEST(WorthIt, AUsablePlantCostsWhatItsBatchCostOverWhatIsLeftAfterPotting) {
    core::Records records = tubsAgainstTrays({16, 14, 15}, {10, 8, 12}, 0.30, 0.20);
    records.pottings.push_back({.batch = records.batches[0].batch.id, .countedOn = dayAfterSticking(40), .potted = 15});
    records.pottings.push_back({.batch = records.batches[0].batch.id, .countedOn = dayAfterSticking(60), .lost = 3});
    const core::WorthOfMethod tub = worthOf(records).pairs.front().dear;
    ASSERT_TRUE(tub.usable);
    EXPECT_EQ(tub.usable->batches, 1);
    EXPECT_EQ(tub.usable->succeeded, 12);
    EXPECT_NEAR(tub.perUsable.value.value(), 20 * 0.30 / 12, farBelowACent);
    EXPECT_LT(tub.perUsable.limits.low, 0.50);
    EXPECT_GT(tub.perUsable.limits.high, 0.50);
    EXPECT_FALSE(worthOf(records).pairs.front().cheap.usable);
}

/// The tubs have rooted half of those that root by day 7, the trays by day 21.
core::Records quickTubs(double tub, double tray) {
    core::Records records = tubsAgainstTrays({10, 10, 10, 10}, {10, 10, 10, 10}, tub, tray);
    for (core::BatchRecord& record : records.batches) {
        const int first = record.batch.method == support::aeratedWater ? 7 : 21;
        record.checks[0].checkedOn = dayAfterSticking(first);
        record.checks[0].rooted = 8;
        record.checks[1].rooted = 2;
    }
    return records;
}

TEST(WorthIt, CountsDaysSavedAtWhatADayIsWorth) {
    const core::WorthOfPair plain = worthOf(quickTubs(0.30, 0.25)).pairs.front();
    EXPECT_NEAR(plain.daysSaved.value(), 7, 1e-9);  // from between sticking and day 7 to between sticking and day 21
    EXPECT_EQ(plain.line.shift, 0);
    const core::WorthOfPair worth = worthOf(quickTubs(0.30, 0.25), {.worthOfADay = 0.10}).pairs.front();
    EXPECT_NEAR(worth.line.shift, 0.70, 1e-9);
    EXPECT_NEAR(worth.dearStrikeToTie.value(), 0.30 / (0.25 / 0.5 + 0.70), 1e-9);
    EXPECT_EQ(worth.chanceDearPaysWithoutDays, plain.chanceDearPays);
    EXPECT_GT(worth.chanceDearPays, 0.99);
    EXPECT_THAT(worth.inWords, HasSubstr("7 days sooner"));
}

TEST(WorthIt, TakesThePriceOfADaySoonerThatHoldsToday) {
    core::Records records = quickTubs(0.30, 0.25);
    core::Price day;
    day.kind = core::PriceKind::DaySooner;
    day.what = "a day";
    day.from = support::stickingDay();
    day.tenThousandths = 1000;
    records.shelves.prices.push_back(day);
    EXPECT_NEAR(worthOf(records).pairs.front().line.shift, 0.70, 1e-9);
    EXPECT_EQ(worthOf(records, {.worthOfADay = 0.0}).pairs.front().line.shift, 0);
}

TEST(WorthIt, PaysForOwnThingsByWhatTheySave) {
    // Each tub 73.00 over two years: 0.10 a day in which its 20 stand, 29 days a batch, so 2.90 of 20 cuttings; 0.10 a cutting beside.
    core::Records records =
        logbook({batchesOf(support::aeratedWater, {18, 19, 17, 18}), batchesOf(support::mediaTray, {9, 8, 10, 9})},
                {ownedBy(examples::lasting("tub", 73, 2), support::tubNorth),
                 ownedBy(examples::lasting("tub", 73, 2), support::tubSouth), ofACutting(0.10, support::aeratedWater),
                 ofACutting(0.20, support::mediaTray)});
    for (std::size_t i = 0; i < records.batches.size(); ++i) {  // one after the other at each station
        const int later = i % 4 < 2 ? 0 : 29;
        records.batches[i].batch.stuckOn = dayAfterSticking(later);
        for (core::Check& check : records.batches[i].checks) check.checkedOn = core::addDays(check.checkedOn, later);
    }
    const core::WorthOfPair pair = worthOf(records).pairs.front();
    EXPECT_NEAR(pair.dear.perCutting.of(core::CostPart::Lasting), 2.90 / 20, farBelowACent);
    EXPECT_NEAR(pair.dear.upFront, 146, farBelowACent);
    EXPECT_NEAR(pair.dear.perBatch, 2.00, farBelowACent);
    EXPECT_NEAR(pair.dear.cuttingsPerBatch, 20, farBelowACent);
    ASSERT_TRUE(pair.breakEven);
    EXPECT_EQ(pair.breakEven->method, support::aeratedWater);
    // A plant costs 0.20 / 0.45 = 0.4444 by tray; a tub's batch of 18 plants saves 8.00 - 2.00 = 6.00: 146 / 6.00 is 24.3.
    EXPECT_NEAR(pair.breakEven->middle.value(), 25, 2);
    EXPECT_LT(pair.breakEven->low.value(), 25);
    EXPECT_GT(pair.breakEven->high.value(), 25);
    // It ties at 0.40 a cutting, so own things may cost 0.30 of them in place of 0.145.
    EXPECT_NEAR(pair.dearCostToTie.value(), 0.40, farBelowACent);
    EXPECT_NEAR(pair.upFrontToTie.value(), 146 * 0.30 / 0.145, 1e-6);
}

TEST(WorthIt, LeavesOutBatchesThatAreNotOverAndSaysSo) {
    core::Records records = tubsAgainstTrays({16, 14, 15}, {10, 8, 12}, 0.30, 0.20);
    records.batches.push_back(aBatch().stuck(20).stuckOn(dayAfterSticking(110)).looked(5, {.rooted = 5}));
    records.batches.push_back(aBatch().stuck(20).looked(5, {.rooted = 5}));
    const core::Worth worth = worthOf(records);
    const core::WorthOfMethod& tub = worth.methods.front();
    EXPECT_EQ(tub.batches, 5);
    EXPECT_EQ(tub.running, 1);
    EXPECT_EQ(tub.unwatched, 1);
    EXPECT_EQ(tub.strike.of, 60);
    EXPECT_THAT(worth.cautions, testing::Contains(HasSubstr("Of 5 batches of aerated water, 1 is not at the horizon "
                                                            "yet and 1 was left before it")));
}

TEST(WorthIt, AsksOnlyForTheDaysOfStickingAndTheMethodsNamed) {
    core::Records records = tubsAgainstTrays({16, 14, 15}, {10, 8, 12}, 0.30, 0.20);
    records.batches.front().batch.stuckOn = dayAfterSticking(-1);
    EXPECT_EQ(worthOf(records, {.from = support::stickingDay()}).methods.front().batches, 3);
    EXPECT_EQ(worthOf(records, {.to = dayAfterSticking(-1)}).methods.size(), 1U);
    const core::Worth one = worthOf(records, {.methods = {support::mediaTray}});
    EXPECT_THAT(one.pairs, IsEmpty());
    EXPECT_THAT(one.inWords, HasSubstr("A rooted plant costs 0.40 EUR by media tray"));
    EXPECT_EQ(worthOf(records, {.from = dayAfterSticking(9)}).inWords, "No batch was stuck in these days.");
}

TEST(WorthIt, RefusesWhatCantBeAsked) {
    const core::Records records = tubsAgainstTrays({16}, {10}, 0.30, 0.20);
    const core::CostsOfBatches costs = examples::costsOf(records);
    const auto fieldOf = [&](const core::WorthQuestion& question) {
        const auto worth = core::worthIt(question, {.shelves = records.shelves,
                                                    .batches = records.batches,
                                                    .pottings = {},
                                                    .costs = costs,
                                                    .today = support::today()});
        return worth ? "" : worth.error().front().field;
    };
    EXPECT_EQ(fieldOf({.horizonDay = 0}), "At day");
    EXPECT_EQ(fieldOf({.level = 1.0}), "Level");
    EXPECT_EQ(fieldOf({.from = dayAfterSticking(1), .to = support::stickingDay()}), "To");
    EXPECT_EQ(fieldOf({.worthOfADay = std::nan("")}), "Worth of a day");
}

TEST(WorthIt, SaysWhatIsNotInTheCosts) {
    core::Records records = tubsAgainstTrays({16, 14, 15}, {10, 8, 12}, 0.30, 0.20);
    records.shelves.prices.push_back(ownedBy(examples::electricity("air pump", 5, 24), support::tubNorth));
    EXPECT_THAT(worthOf(records).missing, ElementsAre(HasSubstr("so the electricity of air pump isn't in it.")));
}

TEST(MoneyInWords, HasTwoDecimalsOrTwoFiguresThatCount) {
    EXPECT_EQ(core::moneyInWords(12, "EUR"), "12.00 EUR");
    EXPECT_EQ(core::moneyInWords(0.126, "EUR"), "0.13 EUR");
    EXPECT_EQ(core::moneyInWords(0.00432, "EUR"), "0.0043 EUR");
    EXPECT_EQ(core::moneyInWords(0, "EUR"), "0.00 EUR");
}

}  // namespace
