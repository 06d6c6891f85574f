// SPDX-License-Identifier: MIT
#include "tests/support/builders.h"

#include <map>

#include "core/batch/batch_code.h"

namespace support {

namespace {

int nextNumber() {
    static int number = 0;
    return ++number;
}

void addPlantsTo(core::Shelves& shelves) {
    core::Plant plainHebe;
    plainHebe.id = hebe;
    plainHebe.botanicalName = "Hebe albicans";
    plainHebe.commonName = "white hebe";
    plainHebe.usualRootingDaysHigh = 35;
    core::Plant protectedDeutzia;
    protectedDeutzia.id = deutzia;
    protectedDeutzia.botanicalName = "Deutzia gracilis";
    protectedDeutzia.cultivar = "Nikko";
    protectedDeutzia.isProtected = true;
    protectedDeutzia.usualRootingDaysHigh = 28;
    shelves.plants = {plainHebe, protectedDeutzia};
    core::StockPlant byTheGate;
    byTheGate.id = hebeByTheGate;
    byTheGate.plant = hebe;
    byTheGate.label = "by the gate";
    core::StockPlant inThePotYard;
    inThePotYard.id = deutziaInThePotYard;
    inThePotYard.plant = deutzia;
    inThePotYard.label = "pot yard";
    shelves.stockPlants = {byTheGate, inThePotYard};
}

void addStationsTo(core::Shelves& shelves) {
    const auto add = [&shelves](core::StationId id, const char* name, core::MethodId method) {
        core::Station station;
        station.id = id;
        station.name = name;
        station.method = method;
        station.rows = 6;
        station.columns = 10;
        station.walkingOrder = static_cast<int>(shelves.stations.size()) + 1;
        shelves.stations.push_back(station);
    };
    add(tubNorth, "Tub north", aeratedWater);
    add(tubSouth, "Tub south", aeratedWater);
    add(benchWest, "Bench west", mediaTray);
    add(benchEast, "Bench east", mediaTray);
}

void addRecipesTo(core::Shelves& shelves) {
    core::Medium mix;
    mix.id = coirMix;
    mix.name = "Coir mix";
    mix.components = {{"coir", 3}, {"perlite", 2}};
    shelves.media = {mix};
    core::Treatment none;
    none.id = nothing;
    none.name = "Nothing";
    core::Treatment gel;
    gel.id = weakGel;
    gel.name = "IBA gel 1000";
    gel.auxins = {{"IBA", core::AuxinForm::Acid, 1000}};
    gel.carrier = core::Carrier::Gel;
    gel.seconds = 5;
    shelves.treatments = {none, gel};
    core::Trial trial;
    trial.id = tubOrTray;
    trial.name = "Tub or tray";
    trial.horizonDay = 28;
    trial.allocationSeed = 7;
    shelves.trials = {trial};
}

core::StockPlantId stockPlantOf(core::PlantId plant) {
    if (plant == hebe) return hebeByTheGate;
    return plant == deutzia ? deutziaInThePotYard : core::StockPlantId{};
}

core::MethodId methodAt(core::StationId station) {
    return station == benchWest || station == benchEast ? mediaTray : aeratedWater;
}

}  // namespace

core::Shelves someShelves() {
    core::Shelves shelves = core::startingShelves();
    shelves.facts.name = "Test logbook";
    const auto number = [](auto& things, std::int64_t first) {
        for (auto& thing : things) thing.id.value = first++;
    };
    number(shelves.methods, aeratedWater.value);
    number(shelves.cuttingKinds, stemTip.value);
    number(shelves.lossCauses, rotted.value);
    addPlantsTo(shelves);
    addStationsTo(shelves);
    addRecipesTo(shelves);
    return shelves;
}

core::Date stickingDay() {
    using namespace std::chrono_literals;
    return 2026y / 3 / 2;
}

core::Date today() {
    using namespace std::chrono_literals;
    return 2026y / 6 / 30;
}

BatchBuilder::BatchBuilder() {
    const int number = nextNumber();
    record_.batch.id = core::BatchId{1'000'000 + number};
    record_.batch.code = core::batchCode(2026 + number / 9999, 1 + number % 9999);
    record_.batch.stuck = 24;
    record_.batch.treatment = nothing;
    record_.batch.cuttingKind = stemTip;
    stuckOn(stickingDay()).of(hebe).at(tubNorth);
}

BatchBuilder& BatchBuilder::stuck(int count) {
    record_.batch.stuck = count;
    return *this;
}

BatchBuilder& BatchBuilder::stuckOn(core::Date day) {
    record_.batch.stuckOn = day;
    return *this;
}

BatchBuilder& BatchBuilder::code(std::string code) {
    record_.batch.code = std::move(code);
    return *this;
}

BatchBuilder& BatchBuilder::of(core::PlantId plant) {
    record_.batch.plant = plant;
    record_.batch.stockPlant = stockPlantOf(plant);
    return *this;
}

BatchBuilder& BatchBuilder::at(core::StationId station) {
    record_.batch.station = station;
    record_.batch.method = methodAt(station);
    return *this;
}

BatchBuilder& BatchBuilder::treated(core::TreatmentId treatment) {
    record_.batch.treatment = treatment;
    return *this;
}

BatchBuilder& BatchBuilder::in(core::MediumId medium) {
    record_.batch.medium = medium;
    return *this;
}

BatchBuilder& BatchBuilder::cut(core::CuttingKindId kind) {
    record_.batch.cuttingKind = kind;
    return *this;
}

BatchBuilder& BatchBuilder::block(std::string block) {
    record_.batch.trial = tubOrTray;
    record_.batch.block = std::move(block);
    return *this;
}

BatchBuilder& BatchBuilder::looked(int afterDays, Seen seen) {
    core::Check check = aCheck(core::addDays(record_.batch.stuckOn, afterDays), seen);
    check.batch = record_.batch.id;
    record_.checks.push_back(std::move(check));
    return *this;
}

BatchBuilder& BatchBuilder::standing(const std::string& positions) {
    record_.batch.positions = positions;
    return stuck(static_cast<int>(core::positionsFrom(positions).value().size()));
}

BatchBuilder& BatchBuilder::foundAt(const std::string& positions, core::Outcome outcome) {
    const core::LossCauseId cause = outcome == core::Outcome::Lost ? rotted : core::LossCauseId{};
    const std::vector<core::Position> found = core::positionsFrom(positions).value();
    for (const core::Position position : found)
        record_.checks.back().findings.push_back({.position = position, .outcome = outcome, .cause = cause});
    return *this;
}

BatchBuilder& BatchBuilder::closed(int afterDays, std::string reason) {
    record_.batch.closedOn = core::addDays(record_.batch.stuckOn, afterDays);
    record_.batch.closeReason = std::move(reason);
    return *this;
}

BatchBuilder aBatch() {
    return {};
}

core::Check aCheck(core::Date day, Seen seen) {
    core::Check check;
    check.id = core::CheckId{2'000'000 + nextNumber()};
    check.checkedOn = day;
    check.rooted = seen.rooted;
    check.withdrawn = seen.withdrawn;
    if (seen.lost != 0) check.losses = {{.cause = seen.cause, .count = seen.lost}};
    return check;
}

core::Records recordsOf(std::vector<core::BatchRecord> batches) {
    core::Records records;
    records.shelves = someShelves();
    std::map<core::Date, core::SessionId> sessions;
    for (core::BatchRecord& record : batches) {
        core::SessionId& session = sessions[record.batch.stuckOn];
        if (!session.isSet()) {
            session = core::SessionId{3'000'000 + nextNumber()};
            records.sessions.push_back({.id = session, .date = record.batch.stuckOn, .worker = "R.O.", .note = ""});
        }
        record.batch.session = session;
    }
    records.batches = std::move(batches);
    return records;
}

}  // namespace support
