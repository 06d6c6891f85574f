// SPDX-License-Identifier: MIT
#include "core/climate/own_band.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/climate/own_band_rules.h"
#include "tests/support/builders.h"

namespace {

using core::BandQuantity;
using core::Stage;
using testing::ElementsAre;
using testing::HasSubstr;
using testing::IsEmpty;

std::vector<std::string> bandSentences(const core::OwnBand& band, const core::Shelves& shelves) {
    std::vector<std::string> sentences;
    for (const core::Refusal& refusal : core::faultsIn(band, shelves)) sentences.push_back(refusal.sentence);
    return sentences;
}

core::OwnBand airBand() {
    return {.stage = Stage::FirstRoots, .quantity = BandQuantity::AirTemperature, .low = 18, .high = 24};
}

TEST(OwnBandQuantities, AreWhatIsMeasuredAndWhatIsWorkedOut) {
    for (const core::Quantity quantity : core::allQuantities) {
        EXPECT_EQ(core::measuredQuantityOf(core::bandQuantityOf(quantity)), quantity);
        EXPECT_EQ(core::factsOf(core::bandQuantityOf(quantity)).word, core::factsOf(quantity).word);
    }
    for (const BandQuantity quantity : core::allBandQuantities())
        EXPECT_EQ(core::bandQuantityFrom(core::factsOf(quantity).word), quantity);
    EXPECT_FALSE(core::measuredQuantityOf(BandQuantity::VapourDeficit));
    EXPECT_EQ(core::factsOf(BandQuantity::VapourDeficit).unit, "kPa");
    EXPECT_EQ(core::factsOf(BandQuantity::DailyLight).unit, "mol/m2");
    EXPECT_FALSE(core::bandQuantityFrom("moonlight"));
}

TEST(OwnBandStages, ReadBackByTheirWord) {
    for (const Stage stage : core::allStages) EXPECT_EQ(core::stageFrom(core::wordFor(stage)), stage);
    EXPECT_FALSE(core::stageFrom("in flower"));
}

TEST(OwnBandRules, PassABandOfOneEnd) {
    core::OwnBand band = airBand();
    EXPECT_THAT(bandSentences(band, support::someShelves()), IsEmpty());
    band.low.reset();
    EXPECT_THAT(bandSentences(band, support::someShelves()), IsEmpty());
    band.low = band.high;
    EXPECT_THAT(bandSentences(band, support::someShelves()), IsEmpty());
}

TEST(OwnBandRules, RefuseWhatIsNoBand) {
    core::OwnBand band = airBand();
    band.low = 25;
    EXPECT_THAT(bandSentences(band, support::someShelves()),
                ElementsAre("Low is 25, which is above the high of 24; no more than that is allowed."));
    band.high = 61;
    EXPECT_THAT(bandSentences(band, support::someShelves()), ElementsAre("High is 61; -30 to 60 C is allowed."));
    band.low.reset();
    band.high.reset();
    EXPECT_THAT(bandSentences(band, support::someShelves()), ElementsAre(HasSubstr("neither a low nor a high end")));
    band = airBand();
    band.plant = {4711};
    EXPECT_THAT(bandSentences(band, support::someShelves()), ElementsAre(HasSubstr("Plant has the id 4711")));
}

TEST(OwnBandRules, WantOneOfEachStageQuantityAndPlant) {
    core::Shelves shelves = support::someShelves();
    core::OwnBand general = airBand();
    general.id = {1};
    shelves.ownBands = {general};
    EXPECT_THAT(bandSentences(general, shelves), IsEmpty()) << "it may be there itself";
    EXPECT_THAT(bandSentences(airBand(), shelves),
                ElementsAre("Band of air temperature, first roots, is there already; one of each stage, quantity and "
                            "plant is allowed."));
    core::OwnBand ofPlant = airBand();
    ofPlant.plant = shelves.plants.front().id;
    EXPECT_THAT(bandSentences(ofPlant, shelves), IsEmpty());
    EXPECT_EQ(core::ownBandOf(shelves, Stage::FirstRoots, BandQuantity::AirTemperature, {}), &shelves.ownBands[0]);
    EXPECT_EQ(core::ownBandOf(shelves, Stage::Hardening, BandQuantity::AirTemperature, {}), nullptr);
}

}  // namespace
