// SPDX-License-Identifier: MIT
#include "core/mixing/cautions_in_place.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <fstream>
#include <set>
#include <sstream>

#include "tests/support/builders.h"

namespace {

using core::CautionTopic;
using enum core::CautionTopic;
using support::aBatch;
using testing::Contains;
using testing::ElementsAre;
using testing::Not;

std::vector<core::Batch> only(const core::BatchRecord& record) {
    return {record.batch};
}

core::Shelves shelvesWithEdibleHebe() {
    core::Shelves shelves = support::someShelves();
    for (core::Plant& plant : shelves.plants)
        if (plant.id == support::hebe) plant.isEdible = true;
    return shelves;
}

TEST(CautionsOnSticking, ComeWithTheHormoneThePlantAndItsUse) {
    const core::Shelves shelves = support::someShelves(), edible = shelvesWithEdibleHebe();
    const auto plain = only(aBatch().treated(support::nothing)), dipped = only(aBatch().treated(support::weakGel));
    const auto protectedOne = only(aBatch().of(support::deutzia).treated(support::nothing));
    EXPECT_THAT(core::cautionsOnSticking({}, shelves), ElementsAre());
    EXPECT_THAT(core::cautionsOnSticking(plain, shelves), ElementsAre());
    EXPECT_THAT(core::cautionsOnSticking(dipped, shelves), ElementsAre(GrowthRegulators, HormoneHygiene, Advice));
    EXPECT_THAT(core::cautionsOnSticking(plain, edible), ElementsAre()) << "eaten, but it got no hormone";
    EXPECT_THAT(core::cautionsOnSticking(dipped, edible),
                ElementsAre(GrowthRegulators, EdibleCrops, HormoneHygiene, Advice));
    EXPECT_THAT(core::cautionsOnSticking(protectedOne, shelves), ElementsAre(ProtectedVarieties, Advice));
}

TEST(CautionsOnSticking, AreSaidOnceForAllBatches) {
    const std::vector<core::Batch> batches{aBatch().treated(support::weakGel).build().batch,
                                           aBatch().treated(support::weakGel).build().batch};
    EXPECT_THAT(core::cautionsOnSticking(batches, support::someShelves()),
                ElementsAre(GrowthRegulators, HormoneHygiene, Advice));
}

TEST(CautionsOnPlants, KnowTheIrritantOnesThatTheTableKnows) {
    const auto named = [](const char* name) {
        core::Plant plant;
        plant.botanicalName = name;
        return core::isKnownIrritant(plant);
    };
    for (const char* name :
         {"Ficus carica", "Ficus elastica", "Euphorbia milii", "Euphorbia pulcherrima", "Epipremnum aureum"})
        EXPECT_TRUE(named(name)) << name;
    for (const char* name : {"Hebe albicans", "Salvia rosmarinus", "", "ficus", "Blue Lagoon"})
        EXPECT_FALSE(named(name)) << name;
}

TEST(CautionsOnStations, SpeakOfWaterOnlyWhereThereIsSome) {
    EXPECT_THAT(core::cautionsOnStation("aerated water"),
                ElementsAre(ElectricityNearWater, BackSiphon, Lamps, HeatUnderADome, Advice));
    EXPECT_THAT(core::cautionsOnStation("media tray"), ElementsAre(Lamps, HeatUnderADome, Advice));
}

TEST(CautionsOnCare, AreThoseOfWhatIsDone) {
    using core::CareKind;
    EXPECT_THAT(core::cautionsOnCare(CareKind::Sprayed), ElementsAre(FungicidesAndPesticides, Advice));
    EXPECT_THAT(core::cautionsOnCare(CareKind::ToppedUp), Contains(Concentrates));
    EXPECT_THAT(core::cautionsOnCare(CareKind::ToppedUp), Not(Contains(ChlorineGas)));
    EXPECT_THAT(core::cautionsOnCare(CareKind::SolutionChanged), Contains(ChlorineGas));
    EXPECT_THAT(core::cautionsOnCare(CareKind::Vented), ElementsAre());
}

TEST(CautionsInPlace, LeaveNoTopicWithoutAPlace) {
    const core::Shelves shelves = shelvesWithEdibleHebe();
    core::Plant fig;
    fig.botanicalName = "Ficus carica";
    std::set<CautionTopic> placed;
    const auto place = [&placed](const std::vector<CautionTopic>& topics) {
        placed.insert(topics.begin(), topics.end());
    };
    place(core::cautionsOnSticking(only(aBatch().treated(support::weakGel)), shelves));
    place(core::cautionsOnSticking(only(aBatch().of(support::deutzia)), shelves));
    place(core::cautionsOnPlant(fig));
    place(core::cautionsOnStockPlant());
    place(core::cautionsOnMedium());
    place(core::cautionsOnStation("aerated water"));
    place(core::cautionsOnDrilling());
    for (const core::CareKind kind : core::allCareKinds) place(core::cautionsOnCare(kind));
    place(core::cautionsOnLeaving({}, shelves));
    for (const core::TradeCaution& caution : core::allTradeCautions())
        EXPECT_TRUE(placed.contains(caution.topic)) << caution.name << " is shown nowhere";
}

std::string withSingleBlanks(const std::string& text) {
    std::istringstream words(text);
    std::string joined, word;
    while (words >> word) joined += (joined.empty() ? "" : " ") + word;
    return joined;
}

TEST(CautionsInPlace, AreInTheManualWordForWordWithTheirSources) {
    std::ifstream file(std::string(STRIKEBOOK_SOURCE_DIR) + "/docs/manual/cautions.md");
    std::stringstream read;
    read << file.rdbuf();
    const std::string page = read.str(), flat = withSingleBlanks(page);
    std::size_t headings = 0;
    for (std::size_t at = 0; (at = page.find("\n### ", at)) != std::string::npos; ++at) ++headings;
    EXPECT_EQ(headings, core::cautionTopics) << "a heading for each caution, and no other of that size";
    for (const core::TradeCaution& caution : core::allTradeCautions()) {
        std::string name(caution.name);
        name[0] = static_cast<char>(std::toupper(static_cast<unsigned char>(name[0])));
        EXPECT_THAT(page, testing::HasSubstr("\n### " + name + "\n"));
        EXPECT_THAT(flat, testing::HasSubstr(withSingleBlanks(std::string(caution.text))));
        EXPECT_THAT(flat, testing::HasSubstr("Source: " + withSingleBlanks(std::string(caution.source)) + "."));
    }
}

}  // namespace
