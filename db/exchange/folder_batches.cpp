// SPDX-License-Identifier: MIT
#include "db/exchange/folder_batches.h"

#include <algorithm>

#include "core/batch/batch_code.h"
#include "core/batch/batch_rules.h"
#include "core/shelf_rules.h"
#include "core/units/entered_text.h"
#include "core/units/figure_text.h"
#include "core/units/number_entry.h"
#include "db/actions/session_actions.h"
#include "db/exchange/exchange_text.h"
#include "db/exchange/table_reader.h"

namespace db {

namespace {

/// One row of batches.csv on its way to a batch.
struct BatchReading {
    TableRow& row;
    FolderShelves& shelves;
    FolderBatches& into;
    core::Date today;

    /// The thing that the row names, made where the folder doesn't list such things. Unset for an empty cell.
    template <class Thing>
    decltype(Thing::id) idOf(NamedList<Thing>& list, const std::string& key, std::string_view column,
                             std::string_view table, Thing made) {
        if (const Thing* known = list.find(key)) return known->id;
        if (list.hasTable) {
            row.fault(column, core::quotable(row.text(column)) + " is not in " + std::string(table) + ".csv.");
            return {};
        }
        made.id.value = newId();
        const core::Refusals refusals = core::faultsIn(made, shelves.shelves);
        for (const core::Refusal& refusal : refusals) row.fault(column, refusal.sentence);
        return refusals.empty() ? list.add(key, std::move(made)).id : decltype(Thing::id){};
    }

    template <class Thing>
    decltype(Thing::id) named(NamedList<Thing>& list, std::string_view column, std::string_view table) {
        Thing made{};
        made.name = row.text(column);
        // Blanks at the ends, which nobody sees, make no other tub; but a name that a table has with its blanks keeps them.
        if (list.find(made.name) == nullptr) made.name = withoutBlanks(made.name);
        if (made.name.empty()) return {};
        const std::string key = made.name;
        return idOf(list, key, column, table, std::move(made));
    }

    core::PlantId plant() {
        core::Plant made{};
        made.botanicalName = row.text("species");
        made.cultivar = row.text("cultivar");
        if (shelves.plants.find(plantKey(made.botanicalName, made.cultivar)) == nullptr) {
            made.botanicalName = withoutBlanks(made.botanicalName);
            made.cultivar = withoutBlanks(made.cultivar);
        }
        if (made.botanicalName.empty()) {
            row.fault("species", "The species is missing; the botanical name is needed.");
            return {};
        }
        const std::string key = plantKey(made.botanicalName, made.cultivar);
        return idOf(shelves.plants, key, "species", "plants", std::move(made));
    }

    core::StockPlantId stockPlant(core::PlantId plant) {
        core::StockPlant made{};
        made.plant = plant;
        made.label = row.text("stock_plant");
        if (shelves.stockPlants.find(stockPlantKey(plant, made.label)) == nullptr)
            made.label = withoutBlanks(made.label);
        if (made.label.empty() || !plant.isSet()) return {};
        const std::string key = stockPlantKey(plant, made.label);
        return idOf(shelves.stockPlants, key, "stock_plant", "stock_plants", std::move(made));
    }

    core::MethodId method() {
        const core::MethodId id = named(shelves.methods, "method", "methods");
        if (!id.isSet()) row.fault("method", "The method is missing; say how the cuttings were to root.");
        return id;
    }

    core::StationId station(core::MethodId method) {
        core::Station made{};
        made.name = row.text("station");
        if (shelves.stations.find(made.name) == nullptr) made.name = withoutBlanks(made.name);
        made.method = method;
        if (made.name.empty() || !method.isSet()) return {};
        const std::string key = made.name;
        return idOf(shelves.stations, key, "station", "stations", std::move(made));
    }

    std::vector<core::Auxin> auxins();
    core::TreatmentId treatment();
    void blameTreatment(const core::Treatment& here, const core::Treatment& known);
    core::SessionId session(core::Date stuckOn);
    core::Batch batch();
};

/// "IBA + NAA" with "1000 + 500".
std::vector<core::Auxin> BatchReading::auxins() {
    const std::vector<std::string> names = partsOf(row.text("auxin")), doses = partsOf(row.text("auxin_mg_per_l"));
    if (names.size() != doses.size())
        row.fault("auxin_mg_per_l",
                  names.empty() ? "There is a dose, but no auxin that it is the dose of."
                                : "Each auxin needs its dose in mg/L; several have \" + \" between, in both columns.");
    std::vector<core::Auxin> auxins;
    for (std::size_t i = 0; i < std::min(names.size(), doses.size()); ++i) {
        const std::optional<double> dose = core::numberFrom(doses[i]);
        if (dose && *dose >= 0)
            auxins.push_back({.name = names[i], .form = core::AuxinForm::Acid, .milligramsPerLitre = *dose});
        else
            row.fault("auxin_mg_per_l",
                      core::quotable(doses[i]) + " is no dose; a number of mg/L from 0 to 1000000 is allowed.");
    }
    return auxins;
}

core::TreatmentId BatchReading::treatment() {
    core::Treatment made{};
    made.name = row.text("treatment");
    core::Treatment* listed = shelves.treatments.find(made.name);
    // As our own export writes it: then the names of auxins may have anything in them.
    if (listed != nullptr && row.text("auxin") == auxinNames(*listed) &&
        row.text("auxin_mg_per_l") == auxinDoses(*listed))
        return listed->id;
    if (listed == nullptr) made.name = withoutBlanks(made.name);
    made.auxins = auxins();
    if (!row.isSound()) return {};
    const bool saysAuxins = !made.auxins.empty();
    if (made.name.empty() && !saysAuxins) return {};
    if (made.name.empty()) made.name = core::description(made);
    core::Treatment* known = shelves.treatments.find(made.name);
    if (known == nullptr) {
        if (saysAuxins) into.rowOfTreatment[made.name] = row.number();
        const std::string key = made.name;
        return idOf(shelves.treatments, key, row.text("treatment").empty() ? "auxin" : "treatment", "treatments",
                    std::move(made));
    }
    if (!saysAuxins) return known->id;
    // Rows before may have left the auxin out.
    if (known->auxins.empty() && !shelves.treatments.hasTable) {
        known->auxins = made.auxins;
        into.rowOfTreatment[made.name] = row.number();
    }
    if (auxinNames(*known) != auxinNames(made) || auxinDoses(*known) != auxinDoses(made)) blameTreatment(made, *known);
    return known->id;
}

void BatchReading::blameTreatment(const core::Treatment& here, const core::Treatment& known) {
    if (!into.blamedTreatments.insert(here.name + '\n' + core::description(here)).second) return;
    const auto first = into.rowOfTreatment.find(here.name);
    const std::string where =
        first == into.rowOfTreatment.end() ? "treatments.csv" : "row " + std::to_string(first->second);
    row.fault("auxin", "The treatment " + core::quotable(here.name) + " is " + core::quotable(core::description(here)) +
                           " here and " + core::quotable(core::description(known)) + " in " + where +
                           "; give the two treatments two names.");
}

core::SessionId BatchReading::session(core::Date stuckOn) {
    const std::string label = row.text("session");
    const bool isListed = !label.empty() && into.hasSessionTable;
    const std::string key = isListed ? label : core::isoText(stuckOn) + '\n' + label;
    const auto known = into.sessionOfLabel.find(key);
    if (known == into.sessionOfLabel.end()) {
        if (isListed) {
            row.fault("session", core::quotable(label) + " is not in sessions.csv.");
            return {};
        }
        into.sessionOfLabel.emplace(key, into.sessions.size());
        into.sessions.push_back({.id = {newId()}, .date = stuckOn, .worker = {}, .note = {}});
        return into.sessions.back().id;
    }
    const core::Session& session = into.sessions[known->second];
    if (session.date != stuckOn)
        row.fault("stuck_on", "The batch was stuck on " + core::isoText(stuckOn) + ", but its session was held on " +
                                  core::isoText(session.date) + "; a batch is stuck on the day of its session.");
    return session.id;
}

core::Batch BatchReading::batch() {
    core::Batch batch{};
    batch.id.value = newId();
    batch.code = row.text("batch");
    const std::optional<core::Date> stuckOn = row.date("stuck_on");
    batch.plant = plant();
    batch.stockPlant = stockPlant(batch.plant);
    batch.method = method();
    batch.station = station(batch.method);
    batch.medium = named(shelves.media, "medium", "media");
    batch.cuttingKind = named(shelves.cuttingKinds, "cutting_kind", "cutting_kinds");
    batch.trial = named(shelves.trials, "trial", "trials");
    batch.stuck = row.countOr("stuck", 0, core::mostStuck);
    batch.positions = core::tidyPositions(row.text("positions"));
    batch.block = row.text("block");
    batch.note = row.text("note");
    batch.licence = row.text("licence");
    batch.closedOn = row.date("closed_on");
    batch.closeReason = row.text("close_reason");
    batch.treatment = treatment();
    if (!stuckOn) return batch;
    batch.stuckOn = *stuckOn;
    row.refuse(core::faultsIn(batch, {}, shelves.shelves, today));
    if (row.isSound()) batch.session = session(*stuckOn);
    return batch;
}

/// A station of which only the name is known has the method of the batch that was stuck in it last.
void giveStationsTheirLatestMethod(FolderShelves& shelves, const FolderBatches& read) {
    if (shelves.stations.hasTable) return;
    std::unordered_map<core::StationId, const core::Batch*> latest;
    for (const core::BatchRecord& record : read.batches) {
        const core::Batch*& last = latest[record.batch.station];
        if (last == nullptr || last->stuckOn <= record.batch.stuckOn) last = &record.batch;
    }
    for (core::Station& station : shelves.shelves.stations)
        if (const auto found = latest.find(station.id); found != latest.end()) station.method = found->second->method;
}

}  // namespace

void readSessions(const std::filesystem::path& folder, FolderBatches& into, core::Date today, FaultList& faults,
                  const std::stop_token& stop) {
    into.hasSessionTable =
        readTable(folder, "sessions", faults, stop, [&](TableRow& row) {
            if (!row.isWhole()) return;
            const std::string label = row.text("session");
            if (const auto refusal = core::faultInName("Session", label)) row.refuse({*refusal});
            const std::optional<core::Date> day = row.date("held_on");
            core::Session session{
                .id = {newId()}, .date = day.value_or(today), .worker = row.text("worker"), .note = row.text("note")};
            row.refuse(core::faultsIn(session, today));
            if (!into.sessionOfLabel.emplace(label, into.sessions.size()).second)
                row.fault("session",
                          "The session " + core::quotable(label) + " is there already; each has a label of its own.");
            into.sessions.push_back(std::move(session));
        }) != TableFound::Missing;
}

void readBatches(const std::filesystem::path& folder, FolderShelves& shelves, FolderBatches& into, core::Date today,
                 FaultList& faults, const std::stop_token& stop) {
    into.hasBatchTable = readTable(folder, "batches", faults, stop, [&](TableRow& row) {
                             const std::string code = row.text("batch");
                             const auto [known, isNew] = into.codes.emplace(
                                 code, ReadBatch{.place = into.batches.size(), .row = row.number(), .isSound = false});
                             if (!isNew && !code.empty())
                                 row.fault("batch", "The batch " + core::quotable(code) + " is in row " +
                                                        std::to_string(known->second.row) +
                                                        " already; each batch has a code of its own.");
                             if (!row.isWhole()) return;
                             core::Batch batch = BatchReading{row, shelves, into, today}.batch();
                             if (!row.isSound() || !isNew) return;
                             known->second.isSound = true;
                             into.batches.push_back({.batch = std::move(batch), .checks = {}});
                             into.rows.push_back(row.number());
                         }) == TableFound::Read;
    giveStationsTheirLatestMethod(shelves, into);
}

}  // namespace db
