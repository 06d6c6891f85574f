// SPDX-License-Identifier: MIT
// The shelves of records that come into a logbook: what it has by name is used, the rest is added.
#include <algorithm>

#include "db/actions/records_writing.h"

namespace db {

namespace {

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

/// Nor have bands: the one that is here stays.
bool isSameName(const core::OwnBand& a, const core::OwnBand& b) {
    return a.stage == b.stage && a.quantity == b.quantity && a.plant == b.plant;
}

/// The price that is here from that day on stays.
bool isSameName(const core::Price& a, const core::Price& b) {
    return a.from == b.from && core::isSamePriced(a, b);
}

/// A treatment or medium has one lot of a name, and one that begins on a day: the one that is here stays.
bool isSameName(const core::Lot& a, const core::Lot& b) {
    return a.treatment == b.treatment && a.medium == b.medium && (a.name == b.name || a.usedFrom == b.usedFrom);
}

}  // namespace

/// Uses what the logbook has by that name, else adds it.
template <class Thing, class ThingId>
void RecordsWriting::bringIn(std::vector<Thing>& things, std::vector<Thing>& shelf, IdMap<ThingId>& ids) {
    for (Thing& thing : things) {
        const ThingId from = thing.id;
        const auto there = std::ranges::find_if(shelf, [&](const Thing& other) { return isSameName(other, thing); });
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
void RecordsWriting::clearShelves() {
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

void RecordsWriting::writeShelves() {
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
    writeNamedByPlant();
    writePrices();
}

/// What has no name of its own.
void RecordsWriting::writeNamedByPlant() {
    core::Shelves& from = records_.shelves;
    for (core::Plan& plan : from.plans) {
        plan.plant = plants_(plan.plant);
        plan.method = methods_(plan.method);
    }
    bringIn(from.plans, shelves_.plans, plans_);
    for (core::OwnBand& band : from.ownBands) band.plant = plants_(band.plant);
    bringIn(from.ownBands, shelves_.ownBands, ownBands_);
}

void RecordsWriting::writePrices() {
    core::Shelves& from = records_.shelves;
    for (core::Price& price : from.prices) {
        price.method = methods_(price.method);
        price.station = stations_(price.station);
        price.medium = media_(price.medium);
        price.treatment = treatments_(price.treatment);
    }
    bringIn(from.prices, shelves_.prices, prices_);
    for (core::Lot& lot : from.lots) {
        lot.treatment = treatments_(lot.treatment);
        lot.medium = media_(lot.medium);
    }
    bringIn(from.lots, shelves_.lots, lots_);
}

/// A trial as this logbook has its things. Its batches come later.
void RecordsWriting::renameIn(core::Trial& trial) {
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
void RecordsWriting::writeStuck() {
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
void RecordsWriting::freeKey(core::LossCause& cause) const {
    for (const core::LossCause& other : shelves_.lossCauses)
        if (other.key == cause.key) cause.key = '\0';
}

}  // namespace db
