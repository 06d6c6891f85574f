// SPDX-License-Identifier: MIT
#include "db/actions/merge_actions.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>

#include "db/actions/records_actions.h"
#include "db/actions/shelf_actions.h"
#include "db/safekeeping/verify.h"
#include "tests/support/builders.h"
#include "tests/support/every_action.h"
#include "tests/support/scratch_folder.h"
#include "tests/support/table_dump.h"

namespace {

using core::Outcome;
using support::aBatch;
using testing::HasSubstr;
using testing::IsEmpty;

class MergeActions : public testing::Test {
  protected:
    /// A logbook with these batches on someShelves().
    db::Logbook with(std::vector<core::BatchRecord> batches) const {
        core::Records records = support::recordsOf(std::move(batches));
        core::StockPlant alike{.id = {250}, .plant = support::deutzia, .label = "by the gate", .note = ""};
        records.shelves.stockPlants.push_back(alike);
        const core::Moment noon = std::chrono::sys_days(support::stickingDay()) + std::chrono::hours(12);
        records.readings.push_back({.id = {1},
                                    .station = support::tubNorth,
                                    .quantity = core::Quantity::SolutionPh,
                                    .readAt = noon,
                                    .value = 6});
        records.care.push_back({.id = {2}, .station = support::tubNorth, .doneAt = noon});
        db::Logbook logbook = db::Logbook::create(file, records.shelves.facts, support::testOptions());
        EXPECT_TRUE(db::addRecords(logbook, std::move(records), "records", true));
        return logbook;
    }

    static core::Tally countsOf(const db::Logbook& logbook) {
        core::Tally all;
        for (const core::BatchLine& line : logbook.batchLines()) {
            all.stuck += line.tally.stuck;
            all.rooted += line.tally.rooted;
            all.lost += line.tally.lost;
            all.withdrawn += line.tally.withdrawn;
        }
        return all;
    }

    /// One step, no count changed, nothing broken; undone, every table is as it was, and redone as it became.
    void expectMerged(db::Logbook& logbook, const std::function<core::Result<db::Changes>()>& merge) const {
        const std::string before = support::tableDump(file);
        const core::Tally counts = countsOf(logbook);
        const auto steps = logbook.history().size();
        const auto done = merge();
        ASSERT_TRUE(done) << done.error().front().sentence;
        EXPECT_EQ(logbook.history().size(), steps + 1);
        EXPECT_EQ(countsOf(logbook), counts);
        EXPECT_THAT(db::verify(logbook, support::today()).faults, IsEmpty());
        const std::string after = support::tableDump(file);
        ASSERT_TRUE(logbook.undo());
        EXPECT_EQ(support::tableDump(file), before);
        ASSERT_TRUE(logbook.redo());
        EXPECT_EQ(support::tableDump(file), after);
    }

    void expectRefused(const core::Result<db::Changes>& done, const std::string& why) const {
        ASSERT_FALSE(done);
        EXPECT_THAT(done.error().front().sentence, HasSubstr(why));
    }

    support::ScratchFolder folder;
    std::filesystem::path file = folder / "merge.strikebook";
};

TEST_F(MergeActions, APlantTakesItsBatchesAndStockPlantsAlong) {
    auto logbook = with({aBatch().of(support::hebe).looked(7, {.rooted = 3}), aBatch().of(support::deutzia)});
    expectMerged(logbook, [&] { return db::mergePlants(logbook, support::hebe, support::deutzia); });
    const core::Shelves shelves = logbook.shelves();
    EXPECT_EQ(core::find(shelves.plants, support::hebe), nullptr);
    for (const core::BatchLine& line : logbook.batchLines()) EXPECT_EQ(line.batch.plant, support::deutzia);
    EXPECT_EQ(shelves.stockPlants.size(), 2U) << "two of one label became one";
    EXPECT_EQ(core::find(shelves.stockPlants, support::hebeByTheGate), nullptr);
    const auto lines = logbook.batchLines();
    EXPECT_TRUE(std::ranges::any_of(
        lines, [](const core::BatchLine& line) { return line.batch.stockPlant == core::StockPlantId{250}; }));
}

TEST_F(MergeActions, AStockPlantWithoutItsLikeMovesAsItIs) {
    auto logbook = with({aBatch().of(support::deutzia)});
    expectMerged(logbook, [&] { return db::mergePlants(logbook, support::deutzia, support::hebe); });
    const core::Shelves shelves = logbook.shelves();
    EXPECT_EQ(core::find(shelves.stockPlants, support::deutziaInThePotYard)->plant, support::hebe);
}

TEST_F(MergeActions, StockPlantsMustBeOfOnePlant) {
    auto logbook = with({aBatch().of(support::deutzia)});
    expectRefused(db::mergeStockPlants(logbook, support::hebeByTheGate, support::deutziaInThePotYard),
                  "Plant of by the gate is Hebe albicans; only stock plants of one plant can be merged.");
    expectMerged(logbook, [&] { return db::mergeStockPlants(logbook, support::deutziaInThePotYard, {250}); });
    EXPECT_EQ(logbook.batchLines().front().batch.stockPlant, core::StockPlantId{250});
}

TEST_F(MergeActions, AStationTakesReadingsAndCareAlong) {
    auto logbook = with({aBatch().standing("A1-A6"), aBatch().at(support::tubSouth).standing("B1-B6")});
    expectMerged(logbook, [&] { return db::mergeStations(logbook, support::tubNorth, support::tubSouth); });
    for (const core::BatchLine& line : logbook.batchLines()) EXPECT_EQ(line.batch.station, support::tubSouth);
    const core::Records records = logbook.records();
    EXPECT_EQ(records.readings.front().station, support::tubSouth);
    EXPECT_EQ(records.care.front().station, support::tubSouth);
}

TEST_F(MergeActions, StationsMustHaveOneMethodAndRoom) {
    auto logbook =
        with({aBatch().code("one").standing("A1-A6"), aBatch().code("two").at(support::tubSouth).standing("A6-B6")});
    expectRefused(db::mergeStations(logbook, support::tubNorth, support::benchWest), "only stations of one method");
    expectRefused(db::mergeStations(logbook, support::tubNorth, support::tubSouth),
                  "one: Positions are A6, where cuttings of two stand");
    core::Station small = *core::find(logbook.shelves().stations, support::tubSouth);
    EXPECT_FALSE(db::keep(logbook,
                          [&] {
                              small.rows = 1;
                              return small;
                          }()))
        << "two would stand outside";
}

TEST_F(MergeActions, CausesOfOneCheckBecomeOneSum) {
    core::BatchRecord record = aBatch().standing("A1-A6").looked(7, {.lost = 2}).foundAt("A1", Outcome::Lost);
    record.checks.front().losses.push_back({.cause = support::driedOut, .count = 3});
    record.checks.front().findings.push_back({{0, 1}, Outcome::Lost, support::driedOut});
    auto logbook = with({record, aBatch().at(support::tubSouth).looked(9, {.lost = 1})});
    expectMerged(logbook, [&] { return db::mergeLossCauses(logbook, support::rotted, support::driedOut); });
    EXPECT_EQ(core::find(logbook.shelves().lossCauses, support::rotted), nullptr);
    for (const core::BatchRecord& each : logbook.batchRecords())
        for (const core::Check& check : each.checks) {
            ASSERT_EQ(check.losses.size(), 1U);
            EXPECT_EQ(check.losses.front().cause, support::driedOut);
            for (const core::Finding& finding : check.findings) EXPECT_EQ(finding.cause, support::driedOut);
        }
}

TEST_F(MergeActions, WhatOnlyBatchesNameMergesAlike) {
    auto logbook = with({aBatch().treated(support::weakGel).cut(support::nodal).in(support::coirMix)});
    core::Medium other;
    other.name = "Coir  mix";
    ASSERT_TRUE(db::keep(logbook, other));
    core::MediumId media;
    for (const core::Medium& medium : logbook.shelves().media)
        if (medium.name == other.name) media = medium.id;
    expectMerged(logbook, [&] { return db::mergeTreatments(logbook, support::weakGel, support::nothing); });
    expectMerged(logbook, [&] { return db::mergeCuttingKinds(logbook, support::nodal, support::stemTip); });
    expectMerged(logbook, [&] { return db::mergeMedia(logbook, support::coirMix, media); });
    const core::Batch batch = logbook.batchLines().front().batch;
    EXPECT_EQ(batch.treatment, support::nothing);
    EXPECT_EQ(batch.cuttingKind, support::stemTip);
    EXPECT_EQ(batch.medium, media);
    EXPECT_EQ(logbook.wordsToUndo(), "merge of medium Coir mix into Coir  mix");
}

TEST_F(MergeActions, AThingIsNotMergedWithItselfOrWithNothing) {
    auto logbook = with({aBatch()});
    expectRefused(db::mergePlants(logbook, support::hebe, support::hebe), "itself; another plant is allowed.");
    expectRefused(db::mergePlants(logbook, support::hebe, {}), "is not in the logbook any more");
    expectRefused(db::mergeMedia(logbook, {99}, support::coirMix), "is not in the logbook any more");
}

}  // namespace
