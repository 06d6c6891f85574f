// SPDX-License-Identifier: MIT
// How the things on the shelves are called in tables and files.
#include <gtest/gtest.h>

#include "core/medium/medium.h"
#include "core/plants/plant.h"
#include "core/treatment/treatment.h"

namespace {

TEST(Plant, IsNamedByBotanicalNameAndCultivar) {
    core::Plant plant;
    plant.botanicalName = "Hebe albicans";
    EXPECT_EQ(core::fullName(plant), "Hebe albicans");
    plant.cultivar = "Snowdrift";
    EXPECT_EQ(core::fullName(plant), "Hebe albicans 'Snowdrift'");
}

TEST(Medium, TellsItsPartsByVolume) {
    core::Medium medium;
    EXPECT_EQ(core::recipe(medium), "");
    medium.components = {{"coir", 3}, {"perlite", 2}, {"sharp sand", 0.5}};
    EXPECT_EQ(core::recipe(medium), "coir 3 : perlite 2 : sharp sand 0.5");
}

TEST(Treatment, IsNoneWhenNothingWasDone) {
    EXPECT_EQ(core::description({}), "none");
}

TEST(Treatment, TellsAuxinsCarrierTimeAndWound) {
    core::Treatment treatment;
    treatment.auxins = {{"IBA", core::AuxinForm::Acid, 1000}};
    treatment.carrier = core::Carrier::Gel;
    treatment.seconds = 5;
    treatment.isWounded = true;
    EXPECT_EQ(core::description(treatment), "IBA 1000 mg/L, gel, 5 s, wounded");
}

TEST(Treatment, CountsPowdersByWeightAndNamesSalts) {
    core::Treatment treatment;
    treatment.auxins = {{"IBA", core::AuxinForm::Salt, 3000}, {"NAA", core::AuxinForm::Acid, 500.5}};
    treatment.carrier = core::Carrier::Powder;
    EXPECT_EQ(core::description(treatment), "IBA (salt) 3000 mg/kg + NAA 500.5 mg/kg, powder");
}

TEST(Treatment, HasAWordForEachCarrierAndForm) {
    EXPECT_EQ(core::wordFor(core::Carrier::None), "none");
    EXPECT_EQ(core::wordFor(core::Carrier::Gel), "gel");
    EXPECT_EQ(core::wordFor(core::Carrier::Powder), "powder");
    EXPECT_EQ(core::wordFor(core::Carrier::LiquidDip), "liquid dip");
    EXPECT_EQ(core::wordFor(core::AuxinForm::Acid), "acid");
    EXPECT_EQ(core::wordFor(core::AuxinForm::Salt), "salt");
}

}  // namespace
