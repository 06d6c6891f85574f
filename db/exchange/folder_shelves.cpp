// SPDX-License-Identifier: MIT
#include "db/exchange/folder_shelves.h"

#include "core/shelf_rules.h"
#include "core/units/entered_text.h"
#include "db/actions/session_actions.h"
#include "db/exchange/folder_facts.h"
#include "db/exchange/folder_trials.h"

namespace db {

namespace {

struct ShelfReading {
    const std::filesystem::path& folder;
    FolderShelves& into;
    FaultList& faults;
    const std::stop_token& stop;

    TableFound table(std::string_view name, const std::function<void(TableRow&)>& take) const {
        return readTable(folder, name, faults, stop, [&take](TableRow& row) {
            if (row.isWhole()) take(row);
        });
    }
};

/// Keeps the thing if all is well with it, by core's own rules.
template <class Thing>
void keepIfSound(TableRow& row, NamedList<Thing>& list, const std::string& key, Thing thing,
                 const core::Shelves& shelves) {
    thing.id.value = newId();
    row.refuse(core::faultsIn(thing, shelves));
    // Even a faulty one is kept under its name, so that batches which name it aren't blamed for it.
    if (list.find(key) == nullptr) list.add(key, std::move(thing));
}

/// For tables of things that have nothing but a name.
template <class Thing>
void readNames(const ShelfReading& reading, std::string_view table, std::string_view column, NamedList<Thing>& list) {
    const TableFound found = reading.table(table, [&](TableRow& row) {
        const std::string name = row.text(column);
        keepIfSound(row, list, name, Thing{.id = {}, .name = name, .isRetired = row.truth("is_retired")},
                    reading.into.shelves);
    });
    list.hasTable = found != TableFound::Missing;
}

bool readFacts(const ShelfReading& reading) {
    int rows = 0;
    const TableFound found = reading.table("logbook", [&](TableRow& row) {
        if (++rows > 1) return row.fault("", "The table has one row, for the one logbook; this is another.");
        reading.into.shelves.facts = factsIn(row);
        row.refuse(core::faultsIn(reading.into.shelves.facts));
    });
    if (found == TableFound::Read && rows == 0)
        reading.faults.add(
            {.file = "logbook.csv", .row = 0, .column = {}, .reason = "The table has no row; it needs one."});
    return found == TableFound::Read;
}

void readSchedules(const ShelfReading& reading) {
    FolderShelves& into = reading.into;
    into.checkSchedules.hasTable = reading.table("check_schedules", [&](TableRow& row) {
        core::CheckSchedule schedule{.id = {},
                                     .name = row.text("check_schedule"),
                                     .firstAfterDays = row.countOr("first_check_after_days", 0),
                                     .everyDays = row.countOr("check_every_days", 0),
                                     .isRetired = row.truth("is_retired")};
        const std::string key = schedule.name;
        keepIfSound(row, into.checkSchedules, key, std::move(schedule), into.shelves);
    }) != TableFound::Missing;
}

core::CheckScheduleId scheduleNamedBy(TableRow& row, FolderShelves& shelves) {
    const std::string name = row.text("check_schedule");
    if (name.empty()) return {};
    if (const core::CheckSchedule* known = shelves.checkSchedules.find(name)) return known->id;
    row.fault("check_schedule", core::quotable(name) + " is not in check_schedules.csv.");
    return {};
}

void readMethods(const ShelfReading& reading) {
    FolderShelves& into = reading.into;
    into.methods.hasTable = reading.table("methods", [&](TableRow& row) {
        core::Method method{.id = {},
                            .name = row.text("method"),
                            .checkSchedule = scheduleNamedBy(row, into),
                            .isRetired = row.truth("is_retired")};
        const std::string key = method.name;
        keepIfSound(row, into.methods, key, std::move(method), into.shelves);
    }) != TableFound::Missing;
}

void readPlants(const ShelfReading& reading) {
    FolderShelves& into = reading.into;
    into.plants.hasTable = reading.table("plants", [&](TableRow& row) {
        core::Plant plant{.id = {},
                          .botanicalName = row.text("species"),
                          .cultivar = row.text("cultivar"),
                          .commonName = row.text("common_name"),
                          .isProtected = row.truth("is_protected"),
                          .usualRootingDaysHigh = {},
                          .checkSchedule = scheduleNamedBy(row, into),
                          .note = row.text("note"),
                          .isRetired = row.truth("is_retired"),
                          .isEdible = row.truth("is_edible")};
        if (const auto days = row.count("usual_rooting_days_high"))
            plant.usualRootingDaysHigh = static_cast<int>(*days);
        const std::string key = plantKey(plant.botanicalName, plant.cultivar);
        keepIfSound(row, into.plants, key, std::move(plant), into.shelves);
    }) != TableFound::Missing;
    into.stockPlants.hasTable = reading.table("stock_plants", [&](TableRow& row) {
        const core::Plant* plant = into.plants.find(plantKey(row.text("species"), row.text("cultivar")));
        if (plant == nullptr) return row.fault("species", "No plant of this species and cultivar is in plants.csv.");
        core::StockPlant stockPlant{.id = {},
                                    .plant = plant->id,
                                    .label = row.text("stock_plant"),
                                    .note = row.text("note"),
                                    .isRetired = row.truth("is_retired")};
        const std::string key = stockPlantKey(plant->id, stockPlant.label);
        keepIfSound(row, into.stockPlants, key, std::move(stockPlant), into.shelves);
    }) != TableFound::Missing;
}

void readStations(const ShelfReading& reading) {
    FolderShelves& into = reading.into;
    into.stations.hasTable = reading.table("stations", [&](TableRow& row) {
        const std::string methodName = row.text("method");
        if (into.methods.find(methodName) == nullptr) {
            if (into.methods.hasTable)
                return row.fault("method", "No method " + core::quotable(methodName) + " is in methods.csv.");
            keepIfSound(row, into.methods, methodName, core::Method{.id = {}, .name = methodName}, into.shelves);
        }
        core::Station station{.id = {},
                              .name = row.text("station"),
                              .method = into.methods.find(methodName)->id,
                              .rows = row.countOr("rows", 0),
                              .columns = row.countOr("columns", 0),
                              .isStaggered = row.truth("is_staggered"),
                              .blocked = core::tidyPositions(row.text("blocked")),
                              .walkingOrder = row.countOr("walking_order", 0),
                              .note = row.text("note"),
                              .isRetired = row.truth("is_retired")};
        const std::string key = station.name;
        keepIfSound(row, into.stations, key, std::move(station), into.shelves);
    }) != TableFound::Missing;
}

void readMedia(const ShelfReading& reading) {
    FolderShelves& into = reading.into;
    into.media.hasTable = reading.table("media", [&](TableRow& row) {
        core::Medium medium{.id = {},
                            .name = row.text("medium"),
                            .components = {},
                            .note = row.text("note"),
                            .isRetired = row.truth("is_retired")};
        const std::string key = medium.name;
        keepIfSound(row, into.media, key, std::move(medium), into.shelves);
    }) != TableFound::Missing;
    (void)reading.table("medium_components", [&](TableRow& row) {
        core::Medium* medium = into.media.find(row.text("medium"));
        if (medium == nullptr)
            return row.fault("medium", "No medium " + core::quotable(row.text("medium")) + " is in media.csv.");
        const std::optional<double> parts = row.figure("parts");
        if (!parts) return;
        core::Medium mixed = *medium;
        mixed.components = {{.name = row.text("component"), .parts = *parts}};
        for (const core::Refusal& refusal : core::faultsIn(mixed, into.shelves))
            row.fault(refusal.field == "Component" ? "component" : "parts", refusal.sentence);
        medium->components.push_back(mixed.components.front());
    });
}

core::Carrier carrierOf(TableRow& row) {
    const std::string word = row.text("carrier");
    for (const core::Carrier carrier :
         {core::Carrier::None, core::Carrier::Gel, core::Carrier::Powder, core::Carrier::LiquidDip})
        if (word == core::wordFor(carrier)) return carrier;
    if (!word.empty())
        row.fault("carrier", core::quotable(word) + " is no carrier; none, gel, powder or liquid dip is allowed.");
    return core::Carrier::None;
}

core::AuxinForm formOf(TableRow& row) {
    const std::string word = row.text("form");
    for (const core::AuxinForm form : {core::AuxinForm::Acid, core::AuxinForm::Salt})
        if (word == core::wordFor(form)) return form;
    if (!word.empty()) row.fault("form", core::quotable(word) + " is no form of an auxin; acid or salt is allowed.");
    return core::AuxinForm::Acid;
}

void readTreatments(const ShelfReading& reading) {
    FolderShelves& into = reading.into;
    into.treatments.hasTable = reading.table("treatments", [&](TableRow& row) {
        core::Treatment treatment{.id = {},
                                  .name = row.text("treatment"),
                                  .auxins = {},
                                  .carrier = carrierOf(row),
                                  .seconds = row.countOr("seconds", 0),
                                  .isWounded = row.truth("is_wounded"),
                                  .note = row.text("note"),
                                  .isRetired = row.truth("is_retired")};
        const std::string key = treatment.name;
        keepIfSound(row, into.treatments, key, std::move(treatment), into.shelves);
    }) != TableFound::Missing;
    (void)reading.table("treatment_auxins", [&](TableRow& row) {
        core::Treatment* treatment = into.treatments.find(row.text("treatment"));
        if (treatment == nullptr)
            return row.fault("treatment",
                             "No treatment " + core::quotable(row.text("treatment")) + " is in treatments.csv.");
        const std::optional<double> dose = row.figure("mg_per_l");
        if (!dose) return;
        core::Treatment treated = *treatment;
        treated.auxins = {{.name = row.text("auxin"), .form = formOf(row), .milligramsPerLitre = *dose}};
        for (const core::Refusal& refusal : core::faultsIn(treated, into.shelves))
            row.fault(refusal.field == "Auxin" ? "auxin" : "mg_per_l", refusal.sentence);
        treatment->auxins.push_back(treated.auxins.front());
    });
}

void readLossCauses(const ShelfReading& reading) {
    FolderShelves& into = reading.into;
    into.lossCauses.hasTable = reading.table("loss_causes", [&](TableRow& row) {
        const std::string key = row.text("key");
        if (key.size() > 1)
            row.fault("key", core::quotable(key) + " is more than one letter; a to z but w is allowed, or nothing.");
        const std::string name = row.text("cause");
        keepIfSound(row, into.lossCauses, name,
                    core::LossCause{.id = {},
                                    .name = name,
                                    .key = key.size() == 1 ? key.front() : '\0',
                                    .isRetired = row.truth("is_retired")},
                    into.shelves);
    }) != TableFound::Missing;
}

}  // namespace

bool readShelves(const std::filesystem::path& folder, FolderShelves& into, FaultList& faults,
                 const std::stop_token& stop) {
    const ShelfReading reading{folder, into, faults, stop};
    const bool hasFacts = readFacts(reading);
    readSchedules(reading);
    readPlants(reading);
    readMethods(reading);
    readStations(reading);
    readMedia(reading);
    readTreatments(reading);
    readNames(reading, "cutting_kinds", "cutting_kind", into.cuttingKinds);
    readLossCauses(reading);
    readTrials(folder, into, faults, stop);
    return hasFacts;
}

}  // namespace db
