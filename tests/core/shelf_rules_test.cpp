// SPDX-License-Identifier: MIT
#include "core/shelf_rules.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <cmath>
#include <limits>

#include "tests/support/builders.h"

namespace {

using support::someShelves;
using testing::ElementsAre;
using testing::IsEmpty;

std::vector<std::string> sentencesIn(const core::Refusals& faults) {
    std::vector<std::string> sentences;
    for (const core::Refusal& fault : faults) sentences.push_back(fault.sentence);
    return sentences;
}

template <class Thing>
std::vector<std::string> shelfFaults(const Thing& thing) {
    return sentencesIn(core::faultsIn(thing, someShelves()));
}

template <class Things>
void expectNoFaults(const Things& things) {
    for (const auto& thing : things) EXPECT_THAT(shelfFaults(thing), IsEmpty());
}

TEST(ShelfRules, PassWhatStandsThereAlready) {
    const core::Shelves shelves = someShelves();
    expectNoFaults(shelves.plants);
    expectNoFaults(shelves.stockPlants);
    expectNoFaults(shelves.methods);
    expectNoFaults(shelves.stations);
    expectNoFaults(shelves.media);
    expectNoFaults(shelves.treatments);
    expectNoFaults(shelves.cuttingKinds);
    expectNoFaults(shelves.lossCauses);
    expectNoFaults(shelves.trials);
    EXPECT_THAT(core::faultsIn(shelves.facts), IsEmpty());
}

TEST(ShelfRules, NeedANameThatIsNotTaken) {
    core::Method method;
    EXPECT_THAT(shelfFaults(method), ElementsAre("Name is blank; text of 1 to 200 characters is allowed."));
    method.name = "media tray";
    EXPECT_THAT(shelfFaults(method),
                ElementsAre("Name is \"media tray\", which is taken; a name that is not taken is allowed."));
    method.id = support::mediaTray;
    EXPECT_THAT(shelfFaults(method), IsEmpty());
}

TEST(ShelfRules, TellPlantsApartByNameAndCultivarTogether) {
    core::Plant plant;
    plant.botanicalName = "Deutzia gracilis";
    EXPECT_THAT(shelfFaults(plant), IsEmpty());
    plant.cultivar = "Nikko";
    EXPECT_THAT(
        shelfFaults(plant),
        ElementsAre(
            "Botanical name is \"Deutzia gracilis 'Nikko'\", which is taken; a name that is not taken is allowed."));
    plant.cultivar = "Snow";
    plant.usualRootingDaysHigh = 0;
    EXPECT_THAT(shelfFaults(plant), ElementsAre("Usual days to root is 0; 1 to 3650 is allowed."));
}

TEST(ShelfRules, TellStockPlantsApartWithinTheirPlant) {
    core::StockPlant stockPlant;
    stockPlant.plant = support::deutzia;
    stockPlant.label = "by the gate";
    EXPECT_THAT(shelfFaults(stockPlant), IsEmpty());
    stockPlant.plant = support::hebe;
    EXPECT_THAT(shelfFaults(stockPlant),
                ElementsAre("Label is \"by the gate\", which is taken; a name that is not taken is allowed."));
    stockPlant.plant = {};
    EXPECT_THAT(shelfFaults(stockPlant), ElementsAre("Plant is not given; one that this logbook has is allowed."));
}

TEST(ShelfRules, KeepAStationWithinItsLetters) {
    core::Station station = someShelves().stations.front();
    station.rows = 27;
    station.columns = -1;
    station.method = core::MethodId{5};
    EXPECT_THAT(
        shelfFaults(station),
        ElementsAre("Method has the id 5, which this logbook does not have; one that this logbook has is allowed.",
                    "Rows is 27; 0 to 26 is allowed.", "Columns is -1; 0 to 1000 is allowed."));
}

TEST(ShelfRules, NeedPartsAndDosesThatCanBeMeasured) {
    core::Medium medium;
    medium.name = "Mix";
    medium.components = {{"coir", 0}, {"bark", std::nan("")}, {"sand", 2000}, {"grit", 1}};
    EXPECT_THAT(shelfFaults(medium), ElementsAre("Parts of \"coir\" is 0; more than 0 to 1000 is allowed.",
                                                 "Parts of \"bark\" is nan; more than 0 to 1000 is allowed.",
                                                 "Parts of \"sand\" is 2000; more than 0 to 1000 is allowed."));
    core::Treatment treatment;
    treatment.name = "Dip";
    treatment.auxins = {{"IBA", core::AuxinForm::Acid, -1},
                        {"NAA", core::AuxinForm::Acid, std::numeric_limits<double>::infinity()}};
    treatment.seconds = -1;
    EXPECT_EQ(shelfFaults(treatment).size(), 3U);
}

TEST(ShelfRules, LetAKeyPickOneCauseOnly) {
    core::LossCause cause;
    cause.name = "slugs";
    EXPECT_THAT(shelfFaults(cause), IsEmpty());
    cause.key = 's';
    EXPECT_THAT(shelfFaults(cause), IsEmpty());
    cause.key = 'r';
    EXPECT_THAT(shelfFaults(cause),
                ElementsAre("Key is \"r\", which is taken; a to z but w, each once, or none is allowed."));
    cause.key = 'w';
    EXPECT_THAT(shelfFaults(cause), ElementsAre("Key is \"w\"; a to z but w, each once, or none is allowed."));
}

TEST(ShelfRules, KeepTheFactsWithinReason) {
    core::LogbookFacts facts = someShelves().facts;
    facts.level = 1;
    facts.checkEveryDays = 0;
    facts.paper = "A3";
    facts.horizonDay = 0;
    EXPECT_THAT(sentencesIn(core::faultsIn(facts)),
                ElementsAre("Days between checks is 0; 1 to 365 is allowed.", "Horizon day is 0; 1 to 3650 is allowed.",
                            "Level is 1; 0.5 to 0.999 is allowed.", "Paper is \"A3\"; A4 or Letter is allowed."));
}

TEST(ShelfRules, KeepTheBenchsOwnFiguresWithinReason) {
    core::LogbookFacts facts = someShelves().facts;
    facts.altitudeMetres = -430;
    facts.degreeDayBase = 40;
    facts.falseAlarmRate = 0.0001;
    EXPECT_THAT(core::faultsIn(facts), IsEmpty());
    facts.altitudeMetres = 6001;
    facts.degreeDayBase = -10.5;
    facts.falseAlarmRate = 0;
    EXPECT_THAT(sentencesIn(core::faultsIn(facts)),
                ElementsAre("Altitude in m is 6001; -430 to 6000 is allowed.",
                            "Base of degree-days in C is -10.5; -10 to 40 is allowed.",
                            "Rate of false alarms is 0; 0.0001 to 0.5 is allowed."));
}

TEST(ShelfRules, NeedATrialsHorizonToBeADay) {
    core::Trial trial;
    trial.name = "Gel or none";
    EXPECT_THAT(shelfFaults(trial), IsEmpty());
    trial.horizonDay = -2;
    EXPECT_THAT(shelfFaults(trial), ElementsAre("Horizon day is -2; 1 to 3650 is allowed."));
}

TEST(ShelfRules, HoldCheckSchedulesToDaysThatComeToPass) {
    EXPECT_THAT(shelfFaults(core::CheckSchedule{.id = {}, .name = "weekly", .firstAfterDays = 7, .everyDays = 7}),
                IsEmpty());
    EXPECT_THAT(shelfFaults(core::CheckSchedule{.id = {}, .name = "", .firstAfterDays = 0, .everyDays = 366}),
                ElementsAre("Name is blank; text of 1 to 200 characters is allowed.",
                            "Days to the first check is 0; 1 to 365 is allowed.",
                            "Days between checks is 366; 1 to 365 is allowed."));
    core::Method method;
    method.name = "mist bench";
    method.checkSchedule = {5};
    EXPECT_THAT(shelfFaults(method), ElementsAre("Check schedule has the id 5, which this logbook does not have; one "
                                                 "that this logbook has is allowed."));
}

TEST(ShelfRules, HoldBlockedPositionsToTheLayout) {
    core::Station station = someShelves().stations.front();  // 6 rows of 10
    station.blocked = "A1, F9-F10";
    EXPECT_THAT(shelfFaults(station), IsEmpty());
    for (const char* blocked : {"G1", "A11", "under the pump"}) {
        station.blocked = blocked;
        EXPECT_THAT(shelfFaults(station), ElementsAre("Blocked positions are \"" + station.blocked +
                                                      "\"; positions of its layout, such as A1, B2-B3 are allowed."));
    }
}

TEST(ShelfRules, HoldTheLogbooksIntervalAndCurrencyToKnownOnes) {
    core::LogbookFacts facts = someShelves().facts;
    facts.interval = "jeffreys";
    facts.currency = "CHF";
    EXPECT_THAT(core::faultsIn(facts), IsEmpty());
    facts.interval = "guess";
    facts.currency = "euro";
    EXPECT_THAT(sentencesIn(core::faultsIn(facts)),
                ElementsAre("Interval is \"guess\"; wilson or another of the known ones is allowed.",
                            "Currency is \"euro\"; three capital letters such as EUR are allowed."));
}

}  // namespace
