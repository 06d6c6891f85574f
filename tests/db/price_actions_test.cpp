// SPDX-License-Identifier: MIT
#include "db/actions/price_actions.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "db/actions/merge_actions.h"
#include "db/actions/records_actions.h"
#include "db/actions/shelf_actions.h"
#include "db/safekeeping/verify.h"
#include "tests/support/builders.h"
#include "tests/support/every_action.h"
#include "tests/support/scratch_folder.h"
#include "tests/support/table_dump.h"

namespace {

using support::aBatch;
using testing::ElementsAre;
using testing::HasSubstr;
using testing::IsEmpty;

core::Date pricedFrom(unsigned month, unsigned day = 1) {
    return {std::chrono::year{2026}, std::chrono::month{month}, std::chrono::day{day}};
}

class PriceActions : public testing::Test {
  protected:
    PriceActions() {
        core::Records records = support::recordsOf({aBatch()});
        logbook.emplace(db::Logbook::create(file, records.shelves.facts, support::testOptions()));
        EXPECT_TRUE(db::addRecords(*logbook, std::move(records), "records", true));
    }

    static core::Price pump(std::int64_t tenThousandths, core::Date from) {
        return {.what = "air pump", .from = from, .tenThousandths = tenThousandths, .lastsYears = 4};
    }
    static core::Lot lot(const std::string& name, core::TreatmentId treatment, core::Date from) {
        return {.name = name, .treatment = treatment, .usedFrom = from};
    }
    void kept(const core::Price& price) {
        const auto done = db::keep(*logbook, price, support::today());
        ASSERT_TRUE(done) << done.error().front().sentence;
    }
    void kept(const core::Lot& one) {
        const auto done = db::keep(*logbook, one, support::today());
        ASSERT_TRUE(done) << done.error().front().sentence;
    }
    std::vector<core::Price> prices() const { return logbook->shelves().prices; }
    std::vector<core::Lot> lots() const { return logbook->shelves().lots; }
    std::string sentenceOf(const core::Result<db::Changes>& refused) const {
        return refused ? std::string("not refused") : refused.error().front().sentence;
    }
    /// Undone, every table is as it was; nothing is broken before and after.
    void expectUndone(const std::string& before) {
        EXPECT_THAT(db::verify(*logbook, support::today()).faults, IsEmpty());
        const std::string after = support::tableDump(file);
        ASSERT_TRUE(logbook->undo());
        EXPECT_EQ(support::tableDump(file), before);
        ASSERT_TRUE(logbook->redo());
        EXPECT_EQ(support::tableDump(file), after);
    }

    support::ScratchFolder folder;
    std::filesystem::path file = folder / "prices.strikebook";
    std::optional<db::Logbook> logbook;
};

TEST_F(PriceActions, APriceIsKeptChangedAndRemovedByItsWords) {
    const auto done = db::keep(*logbook, pump(240'000, pricedFrom(1)), support::today());
    ASSERT_TRUE(done);
    EXPECT_EQ(done->words, "new price of air pump");
    EXPECT_THAT(done->tables, ElementsAre("prices"));
    ASSERT_EQ(prices().size(), 1U);
    core::Price changed = prices().front();
    changed.tenThousandths = 260'000;
    EXPECT_EQ(db::keep(*logbook, changed, support::today())->words, "change of the price of air pump");
    EXPECT_EQ(prices().front(), changed);
    EXPECT_EQ(db::remove(*logbook, changed.id)->words, "removal of the price of air pump");
    EXPECT_THAT(prices(), IsEmpty());
    EXPECT_THAT(sentenceOf(db::remove(*logbook, changed.id)), HasSubstr("not in the logbook any more"));
    EXPECT_THAT(sentenceOf(db::keep(*logbook, changed, support::today())), HasSubstr("not in the logbook any more"));
    logbook->undo();
    EXPECT_THAT(prices(), ElementsAre(changed));
}

TEST_F(PriceActions, PricesComeByKindNameAndDay) {
    kept(core::Price{
        .kind = core::PriceKind::Tariff, .what = "a tariff", .from = pricedFrom(1), .tenThousandths = 2800});
    kept(pump(260'000, pricedFrom(4)));
    kept(pump(240'000, pricedFrom(1)));
    ASSERT_EQ(prices().size(), 3U);
    EXPECT_EQ(prices()[0].tenThousandths, 240'000);
    EXPECT_EQ(prices()[1].tenThousandths, 260'000);
    EXPECT_EQ(prices()[2].kind, core::PriceKind::Tariff);
}

TEST_F(PriceActions, WhatItsKindDoesNotAskForIsNotKept) {
    core::Price price = pump(240'000, pricedFrom(1));
    price.watts = -3;
    price.minutes = 1e9;
    price.basis = core::PriceBasis::Check;
    kept(price);
    EXPECT_EQ(prices().front().watts, 0);
    EXPECT_EQ(prices().front().minutes, 0);
    EXPECT_EQ(prices().front().basis, core::PriceBasis::Batch);
}

TEST_F(PriceActions, AFaultyPriceIsRefusedAndNothingIsWritten) {
    kept(pump(240'000, pricedFrom(1)));
    const std::string before = support::tableDump(file);
    EXPECT_THAT(sentenceOf(db::keep(*logbook, pump(-1, pricedFrom(2)), support::today())), HasSubstr("Amount is"));
    EXPECT_THAT(sentenceOf(db::keep(*logbook, pump(1, pricedFrom(1)), support::today())),
                HasSubstr("another price of \"air pump\" holds"));
    core::Price strange = pump(1, pricedFrom(3));
    strange.station = core::StationId{4711};
    EXPECT_THAT(sentenceOf(db::keep(*logbook, strange, support::today())), HasSubstr("does not have"));
    EXPECT_EQ(support::tableDump(file), before);
}

TEST_F(PriceActions, ALotIsKeptChangedAndRemovedByItsWords) {
    EXPECT_EQ(db::keep(*logbook, lot("12", support::weakGel, pricedFrom(3)), support::today())->words,
              "new lot 12 of IBA gel 1000");
    kept(lot("11", support::weakGel, pricedFrom(1)));
    ASSERT_EQ(lots().size(), 2U);
    EXPECT_EQ(lots().front().name, "11") << "by first day";
    core::Lot changed = lots().front();
    changed.madeOn = pricedFrom(1);
    EXPECT_EQ(db::keep(*logbook, changed, support::today())->words, "change of the lot 11 of IBA gel 1000");
    EXPECT_THAT(sentenceOf(db::keep(*logbook, lot("12", support::weakGel, pricedFrom(5)), support::today())),
                HasSubstr("which is taken"));
    EXPECT_EQ(db::remove(*logbook, changed.id)->words, "removal of the lot 11 of IBA gel 1000");
    EXPECT_THAT(sentenceOf(db::remove(*logbook, changed.id)), HasSubstr("not in the logbook any more"));
}

TEST_F(PriceActions, WhatHasAPriceOrALotIsNotRemovedAndIsTold) {
    core::Price ofMedium{.kind = core::PriceKind::UsedUp, .what = "coir", .from = pricedFrom(1), .lastsFor = 100};
    ofMedium.basis = core::PriceBasis::Cutting;
    core::Price ofStation = pump(1, pricedFrom(1)), ofMethod = pump(1, pricedFrom(1));
    ofMedium.medium = support::coirMix;
    ofStation.station = support::benchEast;
    ofMethod.method = support::mediaTray;
    kept(ofMedium);
    kept(ofStation);
    kept(ofMethod);
    kept(lot("12", support::weakGel, pricedFrom(1)));
    EXPECT_EQ(sentenceOf(db::remove(*logbook, support::coirMix)),
              "The medium Coir mix has the price of coir, so it can't be removed; remove that first, or retire the "
              "medium instead.");
    EXPECT_THAT(sentenceOf(db::remove(*logbook, support::benchEast)),
                HasSubstr("Bench east has the price of air pump"));
    EXPECT_THAT(sentenceOf(db::remove(*logbook, support::weakGel)), HasSubstr("has the lot 12 of IBA gel 1000"));
    for (const core::Station& station : logbook->shelves().stations)
        if (station.id == support::benchWest) {
            ASSERT_TRUE(db::remove(*logbook, station.id));
        }
    EXPECT_THAT(sentenceOf(db::remove(*logbook, support::mediaTray)), HasSubstr("is used by records"));
    ASSERT_TRUE(db::remove(*logbook, lots().front().id));
    EXPECT_TRUE(db::remove(*logbook, support::weakGel));
}

TEST_F(PriceActions, AMethodThatOnlyAPriceNamesIsNotRemoved) {
    ASSERT_TRUE(db::keep(*logbook, core::Method{.name = "fog tent"}));
    const core::Shelves shelves = logbook->shelves();
    core::Price price = pump(1, pricedFrom(1));
    price.method = std::ranges::find(shelves.methods, "fog tent", &core::Method::name)->id;
    kept(price);
    EXPECT_THAT(sentenceOf(db::remove(*logbook, price.method)), HasSubstr("method fog tent has the price of air pump"));
    ASSERT_TRUE(db::remove(*logbook, prices().front().id));
    EXPECT_TRUE(db::remove(*logbook, price.method));
}

TEST_F(PriceActions, AMergedStationTakesItsPricesAlongButForThoseOfTheSameDay) {
    for (const auto& [station, amount, month] :
         {std::tuple(support::tubNorth, 10, 1U), std::tuple(support::tubSouth, 20, 1U),
          std::tuple(support::tubNorth, 30, 4U)}) {
        core::Price price = pump(amount, pricedFrom(month));
        price.station = station;
        kept(price);
    }
    const std::string before = support::tableDump(file);
    ASSERT_TRUE(db::mergeStations(*logbook, support::tubNorth, support::tubSouth));
    ASSERT_EQ(prices().size(), 2U);
    EXPECT_EQ(prices()[0].tenThousandths, 20) << "of the one that stays";
    EXPECT_EQ(prices()[1].tenThousandths, 30);
    for (const core::Price& price : prices()) EXPECT_EQ(price.station, support::tubSouth);
    expectUndone(before);
}

TEST_F(PriceActions, AMergedTreatmentTakesItsLotsAlongButForThoseThatAreThere) {
    kept(lot("1", support::weakGel, pricedFrom(1)));
    kept(lot("2", support::weakGel, pricedFrom(2)));
    kept(lot("3", support::weakGel, pricedFrom(3)));
    kept(lot("2", support::nothing, pricedFrom(4)));      // of the same name
    kept(lot("other", support::nothing, pricedFrom(3)));  // of the same day
    const std::string before = support::tableDump(file);
    ASSERT_TRUE(db::mergeTreatments(*logbook, support::weakGel, support::nothing));
    std::vector<std::string> names;
    for (const core::Lot& one : lots()) {
        EXPECT_EQ(one.treatment, support::nothing);
        names.push_back(one.name);
    }
    EXPECT_THAT(names, ElementsAre("1", "other", "2"));
    expectUndone(before);
}

TEST_F(PriceActions, RecordsThatComeInLeavePricesAndLotsOfTheSameDayAsTheyAre) {
    core::Price mine = pump(240'000, pricedFrom(1));
    mine.method = support::aeratedWater;
    kept(mine);
    kept(lot("1", support::weakGel, pricedFrom(1)));
    core::Records others = support::recordsOf({aBatch().code("from afar")});
    core::Price theirs = mine;
    theirs.id = {1};
    theirs.tenThousandths = 5;
    others.shelves.prices.push_back(theirs);
    theirs.id = {2};
    theirs.from = pricedFrom(5);
    others.shelves.prices.push_back(theirs);
    others.shelves.lots = {{.id = {3}, .name = "A", .treatment = support::weakGel, .usedFrom = pricedFrom(1)},
                           {.id = {4}, .name = "B", .treatment = support::weakGel, .usedFrom = pricedFrom(2)}};
    others.expenses = {{.id = {5},
                        .spentOn = support::stickingDay(),
                        .what = "blades",
                        .hundredths = 320,
                        .session = others.sessions.front().id,
                        .minutes = 40}};
    ASSERT_TRUE(db::addRecords(*logbook, std::move(others), "records from afar"));
    ASSERT_EQ(prices().size(), 2U);
    EXPECT_EQ(prices()[0].tenThousandths, 240'000);
    EXPECT_EQ(prices()[1].tenThousandths, 5);
    EXPECT_EQ(prices()[1].method, support::aeratedWater);
    ASSERT_EQ(lots().size(), 2U);
    EXPECT_EQ(lots()[0].name, "1");
    EXPECT_EQ(lots()[1].name, "B");
    const core::BatchId batch = logbook->batchWithCode("from afar");
    const core::SessionId session = logbook->batch(batch)->batch.session;
    ASSERT_EQ(logbook->expenses(session).size(), 1U);
    EXPECT_EQ(logbook->expenses(session).front().minutes, 40);
    EXPECT_THAT(db::verify(*logbook, support::today()).faults, IsEmpty());
}

TEST_F(PriceActions, TheFileItselfHoldsToWhatAPriceIs) {
    const std::string start = "INSERT INTO prices VALUES (9, 'tariff', 'power', ", end = ", '2026-01-01', ";
    const std::string rest = ", 1, NULL, NULL, 'batch', 0, 0, 1, 0, '')";
    const std::string nobodys = "NULL, NULL, NULL, NULL";
    EXPECT_ANY_THROW(support::runSql(file, start + "301, 401, NULL, NULL" + end + "NULL" + rest)) << "two owners";
    EXPECT_ANY_THROW(support::runSql(file, start + nobodys + end + "'2025-12-31'" + rest)) << "ends before it begins";
    EXPECT_NO_THROW(support::runSql(file, start + nobodys + end + "NULL" + rest));
    EXPECT_ANY_THROW(support::runSql(file, "INSERT INTO lots VALUES (9, 'x', NULL, NULL, '2026-01-01', NULL, '')"));
    EXPECT_ANY_THROW(support::runSql(file, "INSERT INTO expenses VALUES (9, NULL, NULL, '2026-01-01', 'x', 1, NULL)"));
    EXPECT_ANY_THROW(support::runSql(file, "INSERT INTO pottings VALUES (9, 1, '2026-01-01', 0, 0, '')"));
}

}  // namespace
