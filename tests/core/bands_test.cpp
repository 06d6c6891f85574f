// SPDX-License-Identifier: MIT
// Against an excerpt of the reference data on propagation, tests/data/reference/rooting_bands.json.
#include "core/climate/bands.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <fstream>
#include <limits>
#include <nlohmann/json.hpp>
#include <set>

namespace {

using core::Quantity;
using nlohmann::json;

json reference() {
    std::ifstream in(STRIKEBOOK_SOURCE_DIR "/tests/data/reference/rooting_bands.json");
    return json::parse(in);
}

/// The band that holds those of one quantity at some stages, for plants in general.
core::Band holding(const json& bands, const std::string& quantity, const std::set<std::string>& stages) {
    core::Band all{.low = std::numeric_limits<double>::infinity(), .high = 0, .source = {}};
    for (const json& band : bands) {
        if (band.at("quantity") != quantity || band.at("scope") != "general" || !stages.contains(band.at("stage")))
            continue;
        all.low = std::min(all.low, band.at("low").get<double>());
        all.high = std::max(all.high, band.at("high").get<double>());
    }
    return all;
}

core::Band ofUse(const json& bands, const std::string& use) {
    for (const json& band : bands)
        if (band.at("use") == use) return {.low = band.at("low"), .high = band.at("high"), .source = {}};
    return {};
}

void expectBand(Quantity quantity, double low, double high) {
    SCOPED_TRACE(core::factsOf(quantity).word);
    const auto band = core::rootingBand(quantity);
    ASSERT_TRUE(band);
    EXPECT_EQ(band->low, low);
    EXPECT_EQ(band->high, high);
}

TEST(RootingBands, AreThoseOfTheReferenceData) {
    const json all = reference();
    const std::set<std::string> untilRoots{"callus", "root_start"};
    const core::Band water = holding(all["climate_bands"], "water_C", {"all"});
    expectBand(Quantity::SolutionTemperature, water.low, water.high);
    const core::Band medium = holding(all["climate_bands"], "root_zone_C", untilRoots);
    expectBand(Quantity::MediumTemperature, medium.low, medium.high);
    const core::Band air = holding(all["climate_bands"], "air_C", untilRoots);
    expectBand(Quantity::AirTemperature, air.low, 27);  // "25-27 C if there is no bottom heat"
    EXPECT_EQ(air.high, 23);
    const core::Band humidity = holding(all["climate_bands"], "RH_pct", untilRoots);
    expectBand(Quantity::RelativeHumidity, humidity.low, humidity.high);
    const core::Band light = holding(all["light_bands"], "PPFD_umol", untilRoots);
    expectBand(Quantity::Light, light.low, light.high);
    expectBand(Quantity::SolutionEc, ofUse(all["ec_bands"], "cuttings before roots").low,
               ofUse(all["ec_bands"], "cuttings once rooted").high);
    const core::Band ph = ofUse(all["ec_bands"], "pH of solution");
    expectBand(Quantity::SolutionPh, ph.low, ph.high);
    expectBand(Quantity::DissolvedOxygen, 5, core::factsOf(Quantity::DissolvedOxygen).high);
    EXPECT_TRUE(all["dissolved_oxygen_guide"][1]["value"].get<std::string>().starts_with("5 mg/L as a low warning"));
}

TEST(RootingBands, SayWhereTheyComeFrom) {
    for (const Quantity quantity :
         {Quantity::SolutionEc, Quantity::SolutionPh, Quantity::SolutionTemperature, Quantity::DissolvedOxygen})
        EXPECT_EQ(core::rootingBand(quantity)->source, "common practice, no source");
    for (const Quantity quantity : core::allQuantities)
        EXPECT_FALSE(core::rootingBand(quantity)->source.empty()) << core::factsOf(quantity).word;
}

TEST(RootingBands, HoldTheirEnds) {
    const core::Band band{.low = 18, .high = 24, .source = {}};
    EXPECT_FALSE(core::isOutside(band, 18));
    EXPECT_FALSE(core::isOutside(band, 24));
    EXPECT_TRUE(core::isOutside(band, 17.99));
    EXPECT_TRUE(core::isOutside(band, 24.01));
}

}  // namespace
