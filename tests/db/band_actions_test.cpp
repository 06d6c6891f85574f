// SPDX-License-Identifier: MIT
#include "db/actions/band_actions.h"

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

using core::BandQuantity;
using testing::HasSubstr;
using testing::IsEmpty;

class BandActions : public testing::Test {
  protected:
    BandActions() {
        core::Records records = support::recordsOf({});
        logbook.emplace(db::Logbook::create(file, records.shelves.facts, support::testOptions()));
        EXPECT_TRUE(db::addRecords(*logbook, std::move(records), "records", true));
    }

    static core::OwnBand air(core::PlantId plant, double low, double high) {
        return {.stage = core::Stage::FirstRoots,
                .quantity = BandQuantity::AirTemperature,
                .plant = plant,
                .low = low,
                .high = high,
                .note = "by the north wall"};
    }
    std::vector<core::OwnBand> bands() const { return logbook->shelves().ownBands; }

    support::ScratchFolder folder;
    std::filesystem::path file = folder / "bands.strikebook";
    std::optional<db::Logbook> logbook;
};

TEST_F(BandActions, ABandIsSetAndSetAnew) {
    ASSERT_TRUE(db::setOwnBand(*logbook, air({}, 18, 22)));
    ASSERT_TRUE(db::setOwnBand(*logbook, air(support::hebe, 16, 20)));
    core::OwnBand again = air({}, 17, 23);
    again.id = {4711};  // whatever it says
    ASSERT_TRUE(db::setOwnBand(*logbook, again));
    ASSERT_EQ(bands().size(), 2U);
    EXPECT_EQ(bands().front().high, 23);
    EXPECT_EQ(bands().back().plant, support::hebe);
    EXPECT_EQ(logbook->wordsToUndo(), "own band of air temperature, first roots");
    ASSERT_TRUE(logbook->undo());
    EXPECT_EQ(bands().front().high, 22);
    ASSERT_TRUE(logbook->redo());
    EXPECT_THAT(db::verify(*logbook, support::today()).faults, IsEmpty());
}

TEST_F(BandActions, WhatIsNoBandIsRefused) {
    const std::string before = support::tableDump(file);
    const auto refused = db::setOwnBand(*logbook, air({}, 24, 20));
    ASSERT_FALSE(refused);
    EXPECT_THAT(refused.error().front().sentence, HasSubstr("above the high of 20"));
    EXPECT_FALSE(db::setOwnBand(*logbook, air({4711}, 18, 20)));
    EXPECT_FALSE(db::removeOwnBand(*logbook, {4711}));
    EXPECT_EQ(support::tableDump(file), before);
}

TEST_F(BandActions, ABandIsRemovedAndComesBack) {
    ASSERT_TRUE(db::setOwnBand(*logbook, air(support::hebe, 18, 22)));
    const auto kept = bands();
    ASSERT_TRUE(db::removeOwnBand(*logbook, kept.front().id));
    EXPECT_THAT(bands(), IsEmpty());
    ASSERT_TRUE(logbook->undo());
    EXPECT_EQ(bands(), kept);
}

TEST_F(BandActions, APlantWithABandIsNotRemovedAndOneThatMergesBringsItAlong) {
    ASSERT_TRUE(db::setOwnBand(*logbook, air(support::hebe, 18, 22)));
    core::OwnBand light = air(support::hebe, 10, 12);
    light.quantity = BandQuantity::DailyLight;
    ASSERT_TRUE(db::setOwnBand(*logbook, light));
    ASSERT_TRUE(db::setOwnBand(*logbook, air(support::deutzia, 16, 20)));
    const auto refused = db::remove(*logbook, support::hebe);
    ASSERT_FALSE(refused);
    EXPECT_THAT(refused.error().front().sentence, HasSubstr("is used by records"));
    const std::string before = support::tableDump(file);
    ASSERT_TRUE(db::mergePlants(*logbook, support::hebe, support::deutzia));
    ASSERT_EQ(bands().size(), 2U);
    EXPECT_EQ(bands().front().plant, support::deutzia);
    EXPECT_EQ(bands().front().high, 20) << "the one that was there stays";
    EXPECT_EQ(bands().back().high, 12);
    EXPECT_THAT(db::verify(*logbook, support::today()).faults, IsEmpty());
    ASSERT_TRUE(logbook->undo());
    EXPECT_EQ(support::tableDump(file), before);
}

TEST_F(BandActions, TheFileItselfHoldsOneOfEach) {
    ASSERT_TRUE(db::setOwnBand(*logbook, air({}, 18, 22)));
    EXPECT_ANY_THROW(
        support::runSql(file, "INSERT INTO own_bands VALUES (9, 'first roots', 'air_temperature', NULL, 1, 2, '')"));
    EXPECT_ANY_THROW(support::runSql(file, "INSERT INTO own_bands VALUES (9, 'first roots', 'light', NULL, 3, 2, '')"));
}

}  // namespace
