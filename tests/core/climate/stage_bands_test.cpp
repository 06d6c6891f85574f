// SPDX-License-Identifier: MIT
// Against an excerpt of the reference data on propagation, tests/data/reference/rooting_bands.json.
#include "core/climate/stage_bands.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <fstream>
#include <map>
#include <nlohmann/json.hpp>

#include "tests/support/builders.h"

namespace {

using core::BandOwner;
using core::BandQuantity;
using core::ClimateQuantity;
using core::Stage;
using nlohmann::json;
using support::aBatch;
using testing::HasSubstr;
using testing::StartsWith;

json bandReference() {
    std::ifstream in(STRIKEBOOK_SOURCE_DIR "/tests/data/reference/rooting_bands.json");
    return json::parse(in);
}

const std::map<std::string, std::vector<Stage>> stagesInReference{
    {"callus", {Stage::BeforeRoots}},
    {"root_start", {Stage::FirstRoots}},
    {"root_fill", {Stage::FillingRoots}},
    {"harden", {Stage::Hardening}},
    {"all", {Stage::BeforeRoots, Stage::FirstRoots, Stage::FillingRoots, Stage::Hardening}}};
const std::map<std::string, BandQuantity> quantitiesInReference{{"VPD_kPa", BandQuantity::VapourDeficit},
                                                                {"RH_pct", BandQuantity::RelativeHumidity},
                                                                {"air_C", BandQuantity::AirTemperature},
                                                                {"root_zone_C", BandQuantity::MediumTemperature},
                                                                {"water_C", BandQuantity::SolutionTemperature},
                                                                {"DLI_mol", BandQuantity::DailyLight},
                                                                {"PPFD_umol", BandQuantity::Light}};

const core::TradeBand* tradeBand(Stage stage, BandQuantity quantity, std::string_view plant = {}) {
    const auto bands = core::tradeBands();
    const auto found = std::ranges::find_if(bands, [&](const core::TradeBand& band) {
        return band.stage == stage && band.quantity == quantity && band.botanicalName == plant;
    });
    return found == bands.end() ? nullptr : &*found;
}

TEST(StageBands, AreThoseOfTheReferenceData) {
    const json all = bandReference();
    int compared = 0;
    for (const char* section : {"climate_bands", "light_bands"})
        for (const json& band : all.at(section)) {
            const auto quantity = quantitiesInReference.find(band.at("quantity"));
            const auto stages = stagesInReference.find(band.at("stage"));
            // The hours of light are no band of a reading; "warn" says what delays roots, not where they do well.
            if (quantity == quantitiesInReference.end() || stages == stagesInReference.end()) continue;
            const std::string scope = band.at("scope"), plant = scope == "general" ? "" : scope;
            for (const Stage stage : stages->second) {
                SCOPED_TRACE(band.dump());
                const core::TradeBand* ours = tradeBand(stage, quantity->second, plant);
                ASSERT_NE(ours, nullptr);
                EXPECT_EQ(ours->band.low, band.at("low").get<double>());
                // "25-27 C if there is no bottom heat": both are in one band.
                const bool isAirBeforeRoots =
                    plant.empty() && quantity->second == BandQuantity::AirTemperature && stage == Stage::BeforeRoots;
                EXPECT_EQ(ours->band.high, isAirBeforeRoots ? 27 : band.at("high").get<double>());
                if (band.at("how") == "P") {
                    EXPECT_EQ(ours->band.source, "common practice, no source");
                }
                ++compared;
            }
        }
    EXPECT_GE(compared, 24);
}

TEST(StageBands, OfSolutionAreThoseOfTheReferenceData) {
    const json all = bandReference();
    const auto ofUse = [&](const std::string& use) {
        const auto found =
            std::ranges::find_if(all.at("ec_bands"), [&](const json& band) { return band["use"] == use; });
        return std::pair(found->at("low").get<double>(), found->at("high").get<double>());
    };
    const auto ours = [](Stage stage, BandQuantity quantity) {
        return std::pair(tradeBand(stage, quantity)->band.low, tradeBand(stage, quantity)->band.high);
    };
    EXPECT_EQ(ours(Stage::BeforeRoots, BandQuantity::SolutionEc), ofUse("cuttings before roots"));
    EXPECT_EQ(ours(Stage::FirstRoots, BandQuantity::SolutionEc), ofUse("cuttings once rooted"));
    for (const Stage stage : core::allStages) {
        EXPECT_EQ(ours(stage, BandQuantity::SolutionPh), ofUse("pH of solution"));
        EXPECT_EQ(tradeBand(stage, BandQuantity::DissolvedOxygen)->band.low, 5);
        EXPECT_EQ(tradeBand(stage, BandQuantity::DissolvedOxygen)->band.high,
                  core::factsOf(core::Quantity::DissolvedOxygen).high);
    }
    EXPECT_TRUE(all["dissolved_oxygen_guide"][1]["value"].get<std::string>().starts_with("5 mg/L as a low warning"));
}

TEST(StageBands, EachNameASource) {
    for (const core::TradeBand& band : core::tradeBands()) {
        EXPECT_FALSE(band.band.source.empty()) << core::factsOf(band.quantity).word;
        EXPECT_LE(band.band.low, band.band.high);
    }
}

TEST(StageBands, AreOneOfEachStageQuantityAndPlant) {
    for (const core::TradeBand& band : core::tradeBands())
        EXPECT_EQ(tradeBand(band.stage, band.quantity, band.botanicalName), &band) << core::factsOf(band.quantity).word;
}

class BandsOfPlants : public testing::Test {
  protected:
    BandsOfPlants() : shelves_(support::someShelves()) {
        core::Plant poinsettia;
        poinsettia.id = core::PlantId{150};
        poinsettia.botanicalName = "Euphorbia pulcherrima";
        poinsettia.cultivar = "Any Red";
        shelves_.plants.push_back(poinsettia);
    }

    void keep(BandQuantity quantity, std::optional<double> low, std::optional<double> high, core::PlantId plant) {
        shelves_.ownBands.push_back({.id = core::OwnBandId{static_cast<std::int64_t>(shelves_.ownBands.size()) + 1},
                                     .stage = Stage::BeforeRoots,
                                     .quantity = quantity,
                                     .plant = plant,
                                     .low = low,
                                     .high = high,
                                     .note = "warm greenhouse"});
    }
    [[nodiscard]] core::StageBand airOf(core::PlantId plant) const {
        return core::bandFor(shelves_, plant, Stage::BeforeRoots, ClimateQuantity::AirTemperature).value();
    }

    core::Shelves shelves_;
};

TEST_F(BandsOfPlants, AreTheirOwnWhereTheReferenceSaysSo) {
    EXPECT_EQ(airOf(core::PlantId{150}).band.low, 26);
    EXPECT_EQ(airOf(core::PlantId{150}).owner, BandOwner::TradeForPlant);
    EXPECT_EQ(airOf(support::hebe).band.low, 20);
    EXPECT_EQ(airOf(support::hebe).owner, BandOwner::Trade);
    EXPECT_EQ(airOf({}).owner, BandOwner::Trade);
}

TEST_F(BandsOfPlants, OfTheGrowerStandInPlaceOfTheTrades) {
    keep(BandQuantity::AirTemperature, 16, 24, {});
    EXPECT_EQ(airOf(support::hebe).band.high, 24);
    EXPECT_EQ(airOf(support::hebe).owner, BandOwner::Grower);
    EXPECT_EQ(airOf(support::hebe).note, "warm greenhouse");
    // In general the grower's own also stands before what the trade says of one plant.
    EXPECT_EQ(airOf(core::PlantId{150}).owner, BandOwner::Grower);
    keep(BandQuantity::AirTemperature, 22, 26, core::PlantId{150});
    EXPECT_EQ(airOf(core::PlantId{150}).owner, BandOwner::GrowerForPlant);
    EXPECT_EQ(airOf(core::PlantId{150}).band.low, 22);
    EXPECT_EQ(airOf(support::hebe).owner, BandOwner::Grower);
    EXPECT_EQ(
        core::tradeBandFor(shelves_, core::PlantId{150}, Stage::BeforeRoots, ClimateQuantity::AirTemperature)->band.low,
        26);
}

TEST_F(BandsOfPlants, WithOneEndHaveTheOtherWhereNoMeterReaches) {
    keep(BandQuantity::AirTemperature, {}, 25, {});
    EXPECT_FALSE(core::isOutside(airOf(support::hebe).band, -29));
    EXPECT_TRUE(core::isOutside(airOf(support::hebe).band, 25.01));
}

TEST_F(BandsOfPlants, AreAbsentWhereNothingIsSaid) {
    EXPECT_FALSE(core::bandFor(shelves_, support::hebe, Stage::FillingRoots, ClimateQuantity::RelativeHumidity));
    for (const Stage stage : core::allStages) {
        EXPECT_FALSE(core::bandFor(shelves_, support::hebe, stage, ClimateQuantity::LeafTemperature));
        EXPECT_FALSE(core::bandFor(shelves_, support::hebe, stage, ClimateQuantity::DewPoint));
        EXPECT_EQ(core::bandFor(shelves_, {}, stage, ClimateQuantity::OxygenSaturation)->band.low, 80);
    }
}

TEST_F(BandsOfPlants, WhileRootingReachFromTheLowestToTheHighest) {
    const auto ec = core::bandWhileRooting(shelves_, core::Quantity::SolutionEc);
    EXPECT_EQ(ec->low, 0);
    EXPECT_EQ(ec->high, 1.0);
    EXPECT_FALSE(core::bandWhileRooting(shelves_, core::Quantity::LeafTemperature));
}

TEST(StagesOfABatch, FollowFromWhatWasFound) {
    const core::BatchRecord record = aBatch()
                                         .stuck(24)
                                         .looked(7, {})
                                         .looked(14, {.rooted = 3})
                                         .looked(21, {.rooted = 9, .lost = 2})
                                         .looked(28, {.rooted = 10});
    const auto onDay = [&](int day) { return core::stageOn(record, core::addDays(record.batch.stuckOn, day)); };
    EXPECT_EQ(onDay(0), Stage::BeforeRoots);
    EXPECT_EQ(onDay(13), Stage::BeforeRoots);
    EXPECT_EQ(onDay(14), Stage::FirstRoots);
    EXPECT_EQ(onDay(20), Stage::FirstRoots);
    EXPECT_EQ(onDay(21), Stage::FillingRoots);
    EXPECT_EQ(onDay(28), Stage::Hardening);
    const auto stages = core::stagesOf(record);
    ASSERT_EQ(stages.size(), 4U);
    EXPECT_EQ(stages[1].from, core::addDays(record.batch.stuckOn, 14));
    EXPECT_EQ(stages[3].stage, Stage::Hardening);
}

TEST(StagesOfABatch, StayBeforeRootsWhereNothingRooted) {
    const core::BatchRecord lost = aBatch().stuck(6).looked(14, {.lost = 6});
    EXPECT_EQ(core::stagesOf(lost).size(), 1U);
    EXPECT_EQ(core::stageOn(lost, support::today()), Stage::BeforeRoots);
}

TEST(StagesOfABatch, HardenFromTheDayOfClosingByHand) {
    core::BatchRecord record = aBatch().stuck(24).looked(14, {.rooted = 3});
    record.batch.closedOn = core::addDays(record.batch.stuckOn, 20);
    EXPECT_EQ(core::stageOn(record, core::addDays(record.batch.stuckOn, 19)), Stage::FirstRoots);
    EXPECT_EQ(core::stageOn(record, core::addDays(record.batch.stuckOn, 20)), Stage::Hardening);
    EXPECT_EQ(core::stagesOf(record).back().from, *record.batch.closedOn);
}

TEST(BandsOverABatch, ChangeWithItsStagesAndOnlyThen) {
    const core::Shelves shelves = support::someShelves();
    const core::BatchRecord record = aBatch().stuck(24).looked(14, {.rooted = 3}).looked(21, {.rooted = 9});
    const auto ec = core::bandsOver(shelves, record, ClimateQuantity::SolutionEc);
    ASSERT_EQ(ec.size(), 2U);
    EXPECT_EQ(core::bandOn(ec, core::addDays(record.batch.stuckOn, 13))->band.high, 0.5);
    EXPECT_EQ(core::bandOn(ec, core::addDays(record.batch.stuckOn, 14))->band.low, 0.5);
    EXPECT_EQ(core::bandsOver(shelves, record, ClimateQuantity::SolutionPh).size(), 1U);
}

}  // namespace
