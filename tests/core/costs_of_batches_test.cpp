// SPDX-License-Identifier: MIT
// The cases of docs/costs.md to the cent. Prices and batches are invented.
#include "core/money/costs_of_batches.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <array>

#include "tests/core/money_examples.h"

namespace {

using core::CostPart;
using core::PriceBasis;
using examples::bigLogbook;
using examples::costsOf;
using examples::dayAfterSticking;
using examples::farBelowACent;
using examples::from;
using examples::ownedBy;
using support::aBatch;
using testing::ElementsAre;
using testing::HasSubstr;
using testing::IsEmpty;

core::Records priced(std::vector<core::BatchRecord> batches, std::vector<core::Price> prices) {
    core::Records records = support::recordsOf(std::move(batches));
    records.shelves.prices = std::move(prices);
    return records;
}

/// 73.00 over two years is 0.10 a day.
core::Price pump() {
    return ownedBy(examples::lasting("air pump", 73, 2), support::tubNorth);
}

/// 20 stand for 11 days, 15 for 10 more.
core::BatchRecord twentyInTheTub() {
    return aBatch().stuck(20).looked(10, {.rooted = 5}).looked(20, {.rooted = 12, .lost = 3});
}

void expectParts(const core::CostParts& parts, const std::array<double, 5>& expected) {
    for (const CostPart part : core::allCostParts)
        EXPECT_NEAR(parts.of(part), expected[static_cast<std::size_t>(part)], farBelowACent) << core::wordFor(part);
}

TEST(CostsOfBatches, AThingThatLastsForYearsCostsEachDayOnWhichCuttingsStand) {
    const core::CostsOfBatches costs = costsOf(priced({twentyInTheTub()}, {pump()}));
    expectParts(costs.batches.front().parts, {2.10, 0, 0, 0, 0});
    EXPECT_NEAR(costs.batches.front().ofOwnThings, 2.10, farBelowACent);
    ASSERT_EQ(costs.stoodEmpty.size(), 1U);  // from 23 March to 30 June
    EXPECT_EQ(costs.stoodEmpty.front().days, 100);
    EXPECT_EQ(costs.stoodEmpty.front().what, "air pump");
    EXPECT_EQ(costs.stoodEmpty.front().station, support::tubNorth);
    EXPECT_NEAR(costs.stoodEmpty.front().amount, 10, farBelowACent);
}

TEST(CostsOfBatches, TwoBatchesAtAStationShareItsDaysByTheirCuttings) {
    const core::CostsOfBatches costs =
        costsOf(priced({aBatch().stuck(20).looked(10, {.rooted = 20}),
                        aBatch().stuck(30).stuckOn(dayAfterSticking(5)).looked(10, {.rooted = 28, .withdrawn = 2})},
                       {pump()}));
    EXPECT_NEAR(costs.batches[0].parts.total(), 0.74, farBelowACent);
    EXPECT_NEAR(costs.batches[1].parts.total(), 0.86, farBelowACent);
}

TEST(CostsOfBatches, ANewPriceTakesOverInTheMiddleOfABatch) {
    core::Price dearer = from(dayAfterSticking(10), pump());
    dearer.tenThousandths = 1'095'000;  // 0.15 a day
    const core::CostsOfBatches costs =
        costsOf(priced({aBatch().stuck(20).looked(19, {.rooted = 20})}, {pump(), dearer}));
    EXPECT_NEAR(costs.batches.front().parts.total(), 10 * 0.10 + 10 * 0.15, farBelowACent);
    EXPECT_EQ(costs.batches.front().lines.size(), 1U);
    EXPECT_EQ(costs.stoodEmpty.size(), 1U);
}

TEST(CostsOfBatches, WhatAMethodHasIsSharedOverItsStationsAndByNoOther) {
    const auto tenDays = [](core::StationId station, int stuck) {
        return aBatch().at(station).stuck(stuck).looked(9, {.rooted = stuck}).build();
    };
    const core::CostsOfBatches costs = costsOf(
        priced({tenDays(support::tubNorth, 20), tenDays(support::tubSouth, 30), tenDays(support::benchWest, 50)},
               {ownedBy(examples::lasting("lamp", 365, 5), support::aeratedWater)}));
    EXPECT_NEAR(costs.batches[0].parts.total(), 0.80, farBelowACent);
    EXPECT_NEAR(costs.batches[1].parts.total(), 1.20, farBelowACent);
    EXPECT_EQ(costs.batches[2].parts, core::CostParts{});
    EXPECT_THAT(costs.batches[2].lines, IsEmpty());
}

TEST(CostsOfBatches, ElectricityIsPaidAtTheTariffOfTheDay) {
    const core::CostsOfBatches costs = costsOf(
        priced({twentyInTheTub()}, {ownedBy(examples::electricity("air pump", 5, 24), support::tubNorth),
                                    examples::tariff(0.30), from(dayAfterSticking(10), examples::tariff(0.40))}));
    expectParts(costs.batches.front().parts, {0, 0, 0.888, 0, 0});
    EXPECT_THAT(costs.stoodEmpty, IsEmpty());  // what nothing needs is switched off
    EXPECT_THAT(costs.missing, IsEmpty());
}

TEST(CostsOfBatches, SayOnWhichDaysNoTariffHeld) {
    const core::CostsOfBatches costs =
        costsOf(priced({twentyInTheTub(), aBatch().at(support::benchWest)},
                       {ownedBy(examples::electricity("air pump", 5, 24), support::tubNorth),
                        from(dayAfterSticking(3), examples::tariff(0.30))}));
    EXPECT_NEAR(costs.batches[0].parts.total(), 18 * 0.036, farBelowACent);
    EXPECT_THAT(costs.missing, ElementsAre("No tariff holds from 2026-03-02 to 2026-03-04, so the electricity of air "
                                           "pump isn't in it."));
    EXPECT_THAT(costs.batches[0].missing, ElementsAre(0U));
    EXPECT_THAT(costs.batches[1].missing, IsEmpty());
}

TEST(CostsOfBatches, WhatIsUsedUpCostsEachCuttingBatchOrSession) {
    const core::CostsOfBatches costs =
        costsOf(priced({aBatch().stuck(20).treated(support::weakGel), aBatch().stuck(30).in(support::coirMix)},
                       {ownedBy(examples::usedUp("gel", 8, 200, PriceBasis::Cutting), support::weakGel),
                        ownedBy(examples::usedUp("coir mix", 12, 6, PriceBasis::Batch), support::coirMix),
                        examples::usedUp("labels", 3, 10, PriceBasis::Session)}));
    EXPECT_NEAR(costs.batches[0].parts.of(CostPart::UsedUp), 0.80 + 0.12, farBelowACent);
    EXPECT_NEAR(costs.batches[1].parts.of(CostPart::UsedUp), 2.00 + 0.18, farBelowACent);
    ASSERT_EQ(costs.batches[0].lines.size(), 2U);
    EXPECT_EQ(costs.batches[0].lines[0].what, "gel");
    EXPECT_EQ(costs.batches[0].lines[1].what, "labels");
}

TEST(CostsOfBatches, AThingThatLastsForBatchesCostsEachOfThemTheSame) {
    core::Price trays = ownedBy(examples::lasting("trays", 10, 1), support::mediaTray);
    trays.lastsYears.reset();
    trays.lastsFor = 4;
    const core::CostsOfBatches costs = costsOf(priced({aBatch().at(support::benchWest), aBatch()}, {trays}));
    EXPECT_NEAR(costs.batches[0].parts.of(CostPart::Lasting), 2.50, farBelowACent);
    EXPECT_EQ(costs.batches[0].ofOwnThings, 0);
    EXPECT_EQ(costs.batches[1].parts, core::CostParts{});
}

TEST(CostsOfBatches, WorkIsTheSessionsTheChecksAndTheCares) {
    core::Records records = priced(
        {aBatch().stuck(20).looked(9, {.rooted = 20}), aBatch().stuck(30)},
        {examples::workTime("sticking", 30, PriceBasis::Session), examples::workTime("a look", 5, PriceBasis::Check),
         examples::workTime("care", 10, PriceBasis::Care), examples::hourOfWork(12)});
    records.care.push_back({.station = support::tubNorth, .doneAt = std::chrono::sys_days(dayAfterSticking(9))});
    records.care.push_back({.station = support::tubNorth, .doneAt = std::chrono::sys_days(dayAfterSticking(10))});
    records.care.push_back({.station = support::tubSouth, .doneAt = std::chrono::sys_days(dayAfterSticking(10))});
    const core::CostsOfBatches costs = costsOf(records);
    EXPECT_NEAR(costs.batches[0].parts.of(CostPart::Work), 2.40 + 1.00 + 0.80, farBelowACent);
    EXPECT_NEAR(costs.batches[1].parts.of(CostPart::Work), 3.60 + 1.20 + 2.00, farBelowACent);
    ASSERT_EQ(costs.stoodEmpty.size(), 1U);
    EXPECT_EQ(costs.stoodEmpty.front().part, CostPart::Work);
    EXPECT_NEAR(costs.stoodEmpty.front().amount, 2.00, farBelowACent);
}

TEST(CostsOfBatches, MinutesWrittenDownForASessionStandInPlaceOfTheUsualOnes) {
    core::Records records = priced({aBatch().stuck(20), aBatch().stuck(30)},
                                   {examples::workTime("sticking", 30, PriceBasis::Session), examples::hourOfWork(12)});
    records.expenses.push_back({.spentOn = support::stickingDay(),
                                .what = "an afternoon",
                                .hundredths = 500,
                                .session = records.sessions.front().id,
                                .minutes = 45});
    records.expenses.push_back({.batch = records.batches[1].batch.id,
                                .spentOn = support::stickingDay(),
                                .what = "new bag",
                                .hundredths = 725});
    const core::CostsOfBatches costs = costsOf(records);
    expectParts(costs.batches[0].parts, {0, 0, 0, 3.60, 2.00});
    expectParts(costs.batches[1].parts, {0, 0, 0, 5.40, 3.00 + 7.25});
}

TEST(CostsOfBatches, ACareFallsOnTheDayThatItHadWhereTheBenchStands) {
    core::Records records = priced({aBatch().stuck(20).looked(9, {.rooted = 20}), aBatch().stuck(30)},
                                   {examples::workTime("care", 10, PriceBasis::Care), examples::hourOfWork(12)});
    const core::Moment lateInUtc = std::chrono::sys_days(dayAfterSticking(9)) + std::chrono::minutes(22 * 60 + 30);
    records.care.push_back({.station = support::tubNorth, .doneAt = lateInUtc});
    const auto twoHoursEast = [](core::Date day) {
        return core::Moment(std::chrono::sys_days(day)) - std::chrono::hours(2);
    };
    const core::CostsOfBatches costs = core::costsOfBatches({.shelves = records.shelves,
                                                             .batches = records.batches,
                                                             .sessions = records.sessions,
                                                             .care = records.care,
                                                             .expenses = records.expenses,
                                                             .today = support::today(),
                                                             .dayStart = twoHoursEast});
    EXPECT_EQ(costs.batches[0].parts.total(), 0);  // its last cutting went the day before
    EXPECT_NEAR(costs.batches[1].parts.total(), 2, farBelowACent);
}

TEST(CostsOfBatches, AnHourThatIsWorthNothingIsNotAnHourThatHasNoPrice) {
    const std::vector<core::BatchRecord> batches{aBatch().looked(5)};
    const core::Price looks = examples::workTime("a look", 5, PriceBasis::Check);
    const core::CostsOfBatches free = costsOf(priced(batches, {looks, examples::hourOfWork(0)})),
                               unknown = costsOf(priced(batches, {looks}));
    EXPECT_EQ(free.batches.front().parts.total(), 0);
    EXPECT_THAT(free.missing, IsEmpty());
    EXPECT_THAT(unknown.missing,
                ElementsAre("No hour of work is priced on 2026-03-07, so the work of a look isn't in it."));
    EXPECT_THAT(unknown.batches.front().missing, ElementsAre(0U));
}

TEST(CostsOfBatches, CuttingsOfABatchClosedByHandStandUntilThen) {
    const core::CostsOfBatches costs =
        costsOf(priced({aBatch().stuck(20).looked(4, {.rooted = 5}).closed(9)}, {pump()}));
    EXPECT_NEAR(costs.batches.front().parts.total(), 1.00, farBelowACent);
}

TEST(CostsOfBatches, AnOpenBatchHasBorneWhatItsDaysHaveCostSoFar) {
    const core::Records records = priced({aBatch().stuck(20)}, {pump()});
    EXPECT_NEAR(costsOf(records, support::stickingDay()).batches.front().parts.total(), 0.10, farBelowACent);
    EXPECT_NEAR(costsOf(records, dayAfterSticking(6)).batches.front().parts.total(), 0.70, farBelowACent);
    EXPECT_EQ(costsOf(records, dayAfterSticking(-1)).batches.front().parts.total(), 0);
}

TEST(CostsOfBatches, AThingSoldCostsNothingAfterItsLastDay) {
    core::Price sold = pump();
    sold.until = dayAfterSticking(4);
    const core::CostsOfBatches costs = costsOf(priced({twentyInTheTub()}, {sold}));
    EXPECT_NEAR(costs.batches.front().parts.total(), 0.50, farBelowACent);
    EXPECT_THAT(costs.stoodEmpty, IsEmpty());
}

TEST(CostsOfBatches, AreNothingInALogbookWithoutPrices) {
    const core::CostsOfBatches none = costsOf(priced({twentyInTheTub()}, {})),
                               onlyATariff = costsOf(priced({twentyInTheTub()}, {examples::tariff(0.3)})),
                               noBatch = costsOf(priced({}, {pump()}));
    EXPECT_FALSE(none.isAnythingPriced);
    EXPECT_FALSE(onlyATariff.isAnythingPriced);
    EXPECT_TRUE(noBatch.isAnythingPriced);
    EXPECT_THAT(noBatch.stoodEmpty, IsEmpty());
    EXPECT_EQ(none.of(core::BatchId{7}), nullptr);
}

TEST(CostsOfBatches, AnExpenseOfASessionInWhichNothingWasStuckIsSaidToBeInNoBatch) {
    core::Records records = priced({aBatch()}, {});
    records.sessions.push_back({.id = core::SessionId{77}, .date = dayAfterSticking(1), .worker = "", .note = ""});
    records.expenses.push_back(
        {.spentOn = dayAfterSticking(1), .what = "fuel", .hundredths = 900, .session = core::SessionId{77}});
    EXPECT_THAT(costsOf(records).missing,
                ElementsAre(HasSubstr("Nothing was stuck in the session of 2026-03-03, so what was written down for it "
                                      "(fuel)")));
}

TEST(CostsOfBatches, SharesAndWhatStoodEmptyAddUpToThePriceOfAllDays) {
    core::Records records = bigLogbook(60, 500, 20260101);
    core::Price early = from(dayAfterSticking(-5000), pump());
    records.shelves.prices = {early};
    const core::CostsOfBatches costs = costsOf(records);
    double sum = costs.stoodEmpty.front().amount;
    for (const core::CostOfBatch& cost : costs.batches) sum += cost.parts.total();
    core::Date first = support::today();
    for (const core::BatchRecord& record : records.batches) first = std::min(first, record.batch.stuckOn);
    EXPECT_NEAR(sum, 0.10 * (core::daysBetween(first, support::today()) + 1), 1e-8);
}

TEST(CostsOfBatches, StopWhenAskedTo) {
    std::stop_source source;
    source.request_stop();
    const core::Records records = bigLogbook(10, 100, 1);
    const core::CostsOfBatches costs = core::costsOfBatches({.shelves = records.shelves,
                                                             .batches = records.batches,
                                                             .sessions = records.sessions,
                                                             .care = {},
                                                             .expenses = {},
                                                             .today = support::today()},
                                                            source.get_token());
    EXPECT_TRUE(costs.wasStopped);
}

}  // namespace
