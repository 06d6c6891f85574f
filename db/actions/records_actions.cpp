// SPDX-License-Identifier: MIT
#include "db/actions/records_actions.h"

#include <algorithm>
#include <map>
#include <set>
#include <unordered_map>

#include "core/units/entered_text.h"
#include "db/actions/ask_first.h"
#include "db/actions/held_positions.h"
#include "db/inside.h"
#include "db/tables/care_table.h"

namespace db {

namespace {

/// From an id in the records that come in to the id that the thing has in the logbook.
template <class ThingId>
class IdMap {
  public:
    void set(ThingId from, ThingId to) { ids_[from] = to; }
    [[nodiscard]] ThingId operator()(ThingId from) const {
        const auto found = ids_.find(from);
        return found == ids_.end() ? ThingId{} : found->second;
    }

  private:
    std::unordered_map<ThingId, ThingId> ids_;
};

bool isSameName(const core::Plant& a, const core::Plant& b) {
    return a.botanicalName == b.botanicalName && a.cultivar == b.cultivar;
}

bool isSameName(const core::StockPlant& a, const core::StockPlant& b) {
    return a.plant == b.plant && a.label == b.label;
}

template <class Thing>
bool isSameName(const Thing& a, const Thing& b) {
    return a.name == b.name;
}

/// Plans have no name: two that say the same are one.
bool isSameName(core::Plan a, const core::Plan& b) {
    a.id = b.id;
    return a == b;
}

core::Refusal codeIsTaken(const std::string& code) {
    const std::string value = core::quotable(code);
    return {
        .field = "Code",
        .value = value,
        .allowed = "a code that no other batch has",
        .sentence = "The batch " + value + " is in the logbook already, or comes twice; each code may be there once."};
}

bool isUntouched(const Logbook& logbook) {
    const core::Shelves shelves = logbook.shelves();
    const auto isPlanned = [](const core::Trial& trial) { return trial.factor.has_value(); };
    return shelves.plans.empty() && std::ranges::none_of(shelves.trials, isPlanned) && logbook.sessions().empty() &&
           logbook.newestReadings().empty() &&
           logbook.inside().with([](Connection& connection) { return allCare(connection).empty(); });
}

/// Brings records in. Into a logbook in which nothing has happened yet they keep their ids; else every row gets a new one.
class RecordsWriting {
  public:
    RecordsWriting(const Logbook& logbook, Writer& writer, core::Records& records, std::stop_token stop)
        : logbook_(logbook),
          writer_(writer),
          records_(records),
          stop_(std::move(stop)),
          shelves_(logbook.shelves()),
          keepsIds_(isUntouched(logbook)),
          held_(logbook) {}

    core::Refusals write(bool withFacts) {
        core::Refusals faults = takenCodes();
        if (!faults.empty()) return faults;
        if (withFacts) writer_.change(records_.shelves.facts);
        if (withFacts && keepsIds_) clearShelves();
        writeShelves();
        for (core::Session& session : records_.sessions) sessions_.set(session.id, addAs(session.id, session));
        for (core::BatchRecord& record : records_.batches) {
            if (stop_.stop_requested())
                return {{.field = "Records",
                         .value = "stopped",
                         .allowed = "",
                         .sentence = "The records were not brought in, because it was stopped before the end."}};
            core::Refusals found = writeBatch(record);
            prefix(found, record.batch.code);
            append(faults, std::move(found));
        }
        writeStuck();
        writeEvents();
        return faults;
    }

  private:
    core::Refusals takenCodes() const {
        core::Refusals faults;
        std::set<std::string> seen;
        for (const core::BatchRecord& record : records_.batches)
            if (!seen.insert(record.batch.code).second || logbook_.batchWithCode(record.batch.code).isSet())
                faults.push_back(codeIsTaken(record.batch.code));
        return faults;
    }

    template <class Thing, class ThingId>
    ThingId addAs(ThingId id, Thing thing) {
        thing.id = keepsIds_ ? id : ThingId{};
        return writer_.add(thing);
    }

    /// Uses what the logbook has by that name, else adds it.
    template <class Thing, class ThingId>
    void bringIn(std::vector<Thing>& things, std::vector<Thing>& shelf, IdMap<ThingId>& ids) {
        for (Thing& thing : things) {
            const ThingId from = thing.id;
            const auto there =
                std::ranges::find_if(shelf, [&](const Thing& other) { return isSameName(other, thing); });
            if (there != shelf.end()) {
                ids.set(from, there->id);
                continue;
            }
            const bool isTaken = core::find(shelf, from) != nullptr;
            thing.id = addAs(isTaken ? ThingId{} : from, thing);
            ids.set(from, thing.id);
            shelf.push_back(thing);
        }
    }

    /// What a new logbook starts with makes way for what the records have, or a copy would not be the same logbook.
    void clearShelves() {
        for (const core::StockPlant& stockPlant : shelves_.stockPlants) writer_.remove(stockPlant.id);
        for (const core::Plant& plant : shelves_.plants) writer_.remove(plant.id);
        for (const core::Station& station : shelves_.stations) writer_.remove(station.id);
        for (const core::Method& method : shelves_.methods) writer_.remove(method.id);
        for (const core::Medium& medium : shelves_.media) writer_.remove(medium.id);
        for (const core::Treatment& treatment : shelves_.treatments) writer_.remove(treatment.id);
        for (const core::CuttingKind& kind : shelves_.cuttingKinds) writer_.remove(kind.id);
        for (const core::LossCause& cause : shelves_.lossCauses) writer_.remove(cause.id);
        for (const core::Trial& trial : shelves_.trials) writer_.remove(trial.id);
        for (const core::CheckSchedule& schedule : shelves_.checkSchedules) writer_.remove(schedule.id);
        shelves_ = {};
    }

    void writeShelves() {
        core::Shelves& from = records_.shelves;
        bringIn(from.checkSchedules, shelves_.checkSchedules, schedules_);
        for (core::Plant& plant : from.plants) plant.checkSchedule = schedules_(plant.checkSchedule);
        bringIn(from.plants, shelves_.plants, plants_);
        for (core::StockPlant& stockPlant : from.stockPlants) stockPlant.plant = plants_(stockPlant.plant);
        bringIn(from.stockPlants, shelves_.stockPlants, stockPlants_);
        for (core::Method& method : from.methods) method.checkSchedule = schedules_(method.checkSchedule);
        bringIn(from.methods, shelves_.methods, methods_);
        for (core::Station& station : from.stations) station.method = methods_(station.method);
        bringIn(from.stations, shelves_.stations, stations_);
        bringIn(from.media, shelves_.media, media_);
        bringIn(from.treatments, shelves_.treatments, treatments_);
        bringIn(from.cuttingKinds, shelves_.cuttingKinds, cuttingKinds_);
        for (core::LossCause& cause : from.lossCauses) freeKey(cause);
        bringIn(from.lossCauses, shelves_.lossCauses, causes_);
        for (core::Trial& trial : from.trials) renameIn(trial);
        bringIn(from.trials, shelves_.trials, trials_);
        for (core::Plan& plan : from.plans) {
            plan.plant = plants_(plan.plant);
            plan.method = methods_(plan.method);
        }
        bringIn(from.plans, shelves_.plans, plans_);
    }

    /// A trial as this logbook has its things. Its batches come later.
    void renameIn(core::Trial& trial) {
        for (core::TrialArm& arm : trial.arms)
            arm = {.method = methods_(arm.method),
                   .treatment = treatments_(arm.treatment),
                   .medium = media_(arm.medium),
                   .cuttingKind = cuttingKinds_(arm.cuttingKind)};
        for (core::TrialBatch& dealt : trial.batches) {
            dealt.station = stations_(dealt.station);
            dealt.plant = plants_(dealt.plant);
            dealt.stockPlant = stockPlants_(dealt.stockPlant);
            if (dealt.batch.isSet()) stuck_[trial.name][dealt.number] = std::exchange(dealt.batch, {});
        }
    }

    /// Which batches were stuck from what was dealt, where the trial came in with it and was not here before.
    void writeStuck() {
        for (core::Trial& trial : records_.shelves.trials) {
            const auto stuck = stuck_.find(trial.name);
            const core::Trial* here = core::find(shelves_.trials, trial.id);
            if (stuck == stuck_.end() || here == nullptr || here->batches != trial.batches) continue;
            core::Trial whole = *here;
            for (core::TrialBatch& dealt : whole.batches)
                if (const auto batch = stuck->second.find(dealt.number); batch != stuck->second.end())
                    dealt.batch = batches_(batch->second);
            writer_.change(whole);
        }
    }

    /// A cause that is new here gives up its key to one that has it.
    void freeKey(core::LossCause& cause) const {
        for (const core::LossCause& other : shelves_.lossCauses)
            if (other.key == cause.key) cause.key = '\0';
    }

    /// Refuses a batch only for where it stands: the logbook's station of that name may have another layout, or no room.
    core::Refusals writeBatch(core::BatchRecord& record) {
        core::Batch& batch = record.batch;
        batch.session = sessions_(batch.session);
        batch.plant = plants_(batch.plant);
        batch.stockPlant = stockPlants_(batch.stockPlant);
        batch.method = methods_(batch.method);
        batch.station = stations_(batch.station);
        batch.medium = media_(batch.medium);
        batch.treatment = treatments_(batch.treatment);
        batch.cuttingKind = cuttingKinds_(batch.cuttingKind);
        batch.trial = trials_(batch.trial);
        const core::BatchId from = batch.id;
        batch.id = addAs(batch.id, batch);
        batches_.set(from, batch.id);
        for (core::Check& check : record.checks) {
            check.batch = batch.id;
            for (core::Loss& loss : check.losses) loss.cause = causes_(loss.cause);
            for (core::Finding& finding : check.findings) finding.cause = causes_(finding.cause);
            addAs(check.id, check);
        }
        if (batch.positions.empty()) return {};
        core::Refusals faults = held_.faultsIn(record, shelves_);
        held_.add(record);
        return faults;
    }

    void writeEvents() {
        for (core::Reading& reading : records_.readings) {
            reading.station = stations_(reading.station);
            addAs(reading.id, reading);
        }
        for (core::Care& care : records_.care) {
            care.station = stations_(care.station);
            addAs(care.id, care);
        }
        for (core::Expense& expense : records_.expenses) {
            expense.batch = batches_(expense.batch);
            addAs(expense.id, expense);
        }
        for (core::PhotoRecord& record : records_.photos) {
            record.photo.batch = batches_(record.photo.batch);
            if (!keepsIds_) record.photo.id = {};
            writer_.add(std::move(record));
        }
    }

    const Logbook& logbook_;
    Writer& writer_;
    core::Records& records_;
    std::stop_token stop_;
    core::Shelves shelves_;
    bool keepsIds_;
    IdMap<core::PlantId> plants_;
    IdMap<core::StockPlantId> stockPlants_;
    IdMap<core::MethodId> methods_;
    IdMap<core::StationId> stations_;
    IdMap<core::MediumId> media_;
    IdMap<core::TreatmentId> treatments_;
    IdMap<core::CuttingKindId> cuttingKinds_;
    IdMap<core::LossCauseId> causes_;
    IdMap<core::TrialId> trials_;
    IdMap<core::PlanId> plans_;
    std::map<std::string, std::map<int, core::BatchId>> stuck_;  // by trial and number of what was dealt
    IdMap<core::SessionId> sessions_;
    IdMap<core::BatchId> batches_;
    IdMap<core::CheckScheduleId> schedules_;
    HeldPositions held_;
};

}  // namespace

core::Result<Changes> addRecords(Logbook& logbook, core::Records records, const std::string& words, bool withFacts,
                                 std::stop_token stop) {
    return actUnlessRefused(logbook, words, [&](Writer& writer) {
        return RecordsWriting(logbook, writer, records, std::move(stop)).write(withFacts);
    });
}

}  // namespace db
