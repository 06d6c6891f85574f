// SPDX-License-Identifier: MIT
#include "db/actions/shelf_actions.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "tests/support/every_action.h"

namespace {

using testing::HasSubstr;

constexpr core::Date shelfToday{std::chrono::year(2026), std::chrono::month(3), std::chrono::day(14)};

class ShelfActions : public testing::Test {
  protected:
    template <class Thing>
    Thing kept(const std::vector<Thing> core::Shelves::*shelf, const std::string& name) const {
        const core::Shelves shelves = logbook.shelves();
        for (const Thing& thing : shelves.*shelf)
            if (thing.name == name) return thing;
        return {};
    }

    /// Keeps a thing that has everything filled in, reads it back, changes it, removes it, and undoes all that.
    template <class Thing>
    void expectRoundTrip(Thing thing, std::vector<Thing> core::Shelves::*shelf) {
        const core::Shelves start = logbook.shelves();
        ASSERT_TRUE(db::keep(logbook, thing));
        const Thing added = kept(shelf, thing.name);
        ASSERT_TRUE(added.id.isSet());
        thing.id = added.id;
        EXPECT_EQ(added, thing);
        thing.name += " II";
        ASSERT_TRUE(db::keep(logbook, thing));
        EXPECT_EQ(kept(shelf, thing.name), thing);
        ASSERT_TRUE(db::remove(logbook, thing.id));
        EXPECT_FALSE(db::remove(logbook, thing.id));
        EXPECT_EQ(logbook.shelves(), start);
        for (int step = 0; step < 2; ++step) logbook.undo();
        EXPECT_EQ(kept(shelf, added.name), added);
        logbook.undo();
        EXPECT_EQ(logbook.shelves(), start);
    }

    db::Logbook logbook = support::sampleLogbook({}, shelfToday);
};

template <class Thing>
Thing called(const std::string& name) {
    Thing thing;
    thing.name = name;
    return thing;
}

TEST_F(ShelfActions, AStationRoundTrips) {
    auto station = called<core::Station>("Tub \xC3\xA9");
    station.method = logbook.shelves().methods.front().id;
    station.rows = 4;
    station.columns = 6;
    station.walkingOrder = 3;
    station.note = "a\nb";
    expectRoundTrip(station, &core::Shelves::stations);
}

TEST_F(ShelfActions, AMediumRoundTripsWithItsComponentsInOrder) {
    auto medium = called<core::Medium>("coir mix");
    medium.components.push_back({.name = "perlite", .parts = 3});
    medium.components.push_back({.name = "coir", .parts = 0.1});
    medium.note = "x";
    expectRoundTrip(medium, &core::Shelves::media);
}

TEST_F(ShelfActions, ATreatmentRoundTripsWithItsAuxinsInOrder) {
    auto treatment = called<core::Treatment>("strong");
    treatment.auxins.push_back({.name = "NAA", .form = core::AuxinForm::Salt, .milligramsPerLitre = 1000.5});
    treatment.auxins.push_back({.name = "IBA", .form = core::AuxinForm::Acid, .milligramsPerLitre = 0});
    for (const auto carrier :
         {core::Carrier::None, core::Carrier::Gel, core::Carrier::Powder, core::Carrier::LiquidDip}) {
        treatment.carrier = carrier;
        treatment.seconds = 5;
        treatment.isWounded = true;
        treatment.isRetired = true;
        expectRoundTrip(treatment, &core::Shelves::treatments);
    }
}

TEST_F(ShelfActions, ALossCauseRoundTripsWithAndWithoutAKey) {
    auto cause = called<core::LossCause>("slugs");
    expectRoundTrip(cause, &core::Shelves::lossCauses);
    cause.key = 's';
    expectRoundTrip(cause, &core::Shelves::lossCauses);
}

TEST_F(ShelfActions, ATrialRoundTripsWithAndWithoutHorizonAndSeed) {
    auto trial = called<core::Trial>("spring");
    expectRoundTrip(trial, &core::Shelves::trials);
    trial.horizonDay = 35;
    trial.allocationSeed = 4294967295U;
    expectRoundTrip(trial, &core::Shelves::trials);
}

TEST_F(ShelfActions, MethodsAndKindsOfCuttingRoundTrip) {
    auto method = called<core::Method>("mist bench");
    method.isRetired = true;
    expectRoundTrip(method, &core::Shelves::methods);
    expectRoundTrip(called<core::CuttingKind>("mallet"), &core::Shelves::cuttingKinds);
}

TEST_F(ShelfActions, PlantsAndStockPlantsRoundTrip) {
    core::Plant plant{.id = {},
                      .botanicalName = "Ficus pumila",
                      .cultivar = "Ann's \"Own\"",
                      .commonName = "creeping fig",
                      .isProtected = true,
                      .usualRootingDaysHigh = 30,
                      .note = "shade",
                      .isRetired = false};
    ASSERT_TRUE(db::keep(logbook, plant));
    for (const core::Plant& there : logbook.shelves().plants)
        if (there.botanicalName == plant.botanicalName) plant.id = there.id;
    ASSERT_NE(core::find(logbook.shelves().plants, plant.id), nullptr);
    EXPECT_EQ(*core::find(logbook.shelves().plants, plant.id), plant);
    core::StockPlant mother{.id = {}, .plant = plant.id, .label = "bed 3", .note = "old", .isRetired = true};
    ASSERT_TRUE(db::keep(logbook, mother));
    for (const core::StockPlant& there : logbook.shelves().stockPlants)
        if (there.label == mother.label && there.plant == plant.id) mother.id = there.id;
    EXPECT_EQ(*core::find(logbook.shelves().stockPlants, mother.id), mother);
    EXPECT_FALSE(db::remove(logbook, plant.id)) << "its stock plant uses it";
    ASSERT_TRUE(db::remove(logbook, mother.id));
    EXPECT_TRUE(db::remove(logbook, plant.id));
}

TEST_F(ShelfActions, NamesAreNeitherBlankNorTaken) {
    core::Method method;
    method.name = "  ";
    EXPECT_FALSE(db::keep(logbook, method));
    method.name = logbook.shelves().methods.front().name;
    const auto taken = db::keep(logbook, method);
    ASSERT_FALSE(taken);
    EXPECT_THAT(taken.error().front().sentence, HasSubstr("which is taken"));
}

TEST_F(ShelfActions, WhatIsUsedIsNotRemoved) {
    const core::Batch used = logbook.batchLines().front().batch;
    const auto plant = db::remove(logbook, used.plant);
    ASSERT_FALSE(plant);
    EXPECT_THAT(plant.error().front().sentence, HasSubstr("retire it instead"));
    EXPECT_FALSE(db::remove(logbook, used.method));
    EXPECT_FALSE(db::remove(logbook, used.station));
    for (const core::BatchRecord& record : logbook.batchRecords())
        for (const core::Check& check : record.checks)
            for (const core::Loss& loss : check.losses) EXPECT_FALSE(db::remove(logbook, loss.cause));
}

TEST_F(ShelfActions, FactsAreChangedWhole) {
    const core::LogbookFacts facts{.name = "Fern Lane",
                                   .grower = "A. B.",
                                   .rootLengthMillimetres = 12,
                                   .checkEveryDays = 3,
                                   .firstCheckAfterDays = 5,
                                   .horizonDay = 42,
                                   .level = 0.9,
                                   .paper = "Letter",
                                   .isInvented = true,
                                   .citation = "none"};
    ASSERT_TRUE(db::keep(logbook, facts));
    EXPECT_EQ(logbook.shelves().facts, facts);
    core::LogbookFacts bad = facts;
    bad.level = 2;
    EXPECT_FALSE(db::keep(logbook, bad));
}

TEST_F(ShelfActions, ACheckScheduleRoundTrips) {
    auto schedule = called<core::CheckSchedule>("Twice a week");
    schedule.firstAfterDays = 10;
    schedule.everyDays = 3;
    expectRoundTrip(schedule, &core::Shelves::checkSchedules);
}

TEST_F(ShelfActions, ACheckScheduleIsKeptWhileAPlantOrAMethodNamesIt) {
    ASSERT_TRUE(db::keep(logbook, called<core::CheckSchedule>("slow")));
    const core::CheckScheduleId id = kept(&core::Shelves::checkSchedules, "slow").id;
    core::Plant plant = logbook.shelves().plants.front();
    plant.checkSchedule = id;
    ASSERT_TRUE(db::keep(logbook, plant));
    EXPECT_EQ(core::find(logbook.shelves().plants, plant.id)->checkSchedule, id);
    EXPECT_THAT(db::remove(logbook, id).error().front().sentence, HasSubstr("retire it instead"));
    logbook.undo();
    core::Method method = logbook.shelves().methods.back();
    method.checkSchedule = id;
    ASSERT_TRUE(db::keep(logbook, method));
    EXPECT_FALSE(db::remove(logbook, id));
    logbook.undo();
    EXPECT_TRUE(db::remove(logbook, id));
}

TEST_F(ShelfActions, TheUnitsAndTheIntervalOfALogbookAreKept) {
    core::LogbookFacts facts = logbook.shelves().facts;
    facts.interval = "jeffreys";
    facts.units = {.temperature = core::TemperatureUnit::Fahrenheit,
                   .ec = core::EcUnit::Ppm700,
                   .volume = core::VolumeUnit::UsGallons,
                   .length = core::LengthUnit::Inches};
    facts.currency = "USD";
    ASSERT_TRUE(db::keep(logbook, facts));
    EXPECT_EQ(logbook.shelves().facts, facts);
    facts.interval = "guess";
    EXPECT_FALSE(db::keep(logbook, facts));
}

TEST_F(ShelfActions, TheHistorySaysWhichSettingWasChanged) {
    core::LogbookFacts facts = logbook.shelves().facts;
    facts.units.temperature = core::TemperatureUnit::Fahrenheit;
    ASSERT_TRUE(db::keep(logbook, facts));
    EXPECT_EQ(logbook.wordsToUndo(), "change of the logbook's units");
    facts.level = 0.9;
    ASSERT_TRUE(db::keep(logbook, facts));
    EXPECT_EQ(logbook.wordsToUndo(), "change of the logbook's level of intervals");
    facts.altitudeMetres = 1200.5;
    ASSERT_TRUE(db::keep(logbook, facts));
    EXPECT_EQ(logbook.wordsToUndo(), "change of the logbook's altitude");
    facts.degreeDayBase = -2;
    ASSERT_TRUE(db::keep(logbook, facts));
    EXPECT_EQ(logbook.wordsToUndo(), "change of the logbook's base of degree-days");
    facts.falseAlarmRate = 0.05;
    ASSERT_TRUE(db::keep(logbook, facts));
    EXPECT_EQ(logbook.wordsToUndo(), "change of the logbook's rate of false alarms");
    EXPECT_EQ(logbook.shelves().facts, facts);
    facts.level = 0.8;
    facts.paper = "Letter";
    ASSERT_TRUE(db::keep(logbook, facts));
    EXPECT_EQ(logbook.wordsToUndo(), "change of the logbook's settings");
}

}  // namespace
