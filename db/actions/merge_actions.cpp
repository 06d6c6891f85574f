// SPDX-License-Identifier: MIT
#include "db/actions/merge_actions.h"

#include <algorithm>

#include "core/batch/position_rules.h"
#include "core/shelf_rules.h"
#include "db/actions/ask_first.h"
#include "db/actions/held_positions.h"
#include "db/actions/moved_things.h"
#include "db/actions/priced_things.h"
#include "db/inside.h"
#include "db/tables/check_table.h"

namespace db {

namespace {

std::string calledAs(const core::Plant& plant) {
    return core::fullName(plant);
}

std::string calledAs(const core::StockPlant& stockPlant) {
    return stockPlant.label;
}

template <class Thing>
std::string calledAs(const Thing& thing) {
    return thing.name;
}

core::Refusal withItself(const std::string& kind, const std::string& name) {
    return {.field = "Merge with",
            .value = name,
            .allowed = "another " + kind,
            .sentence = "Merge with is " + name + " itself; another " + kind + " is allowed."};
}

/// Both must be there and be two; then `join` makes the records name the one that stays, and the other is removed.
template <class Thing, class ThingId, class Join>
core::Result<Changes> mergeThings(Logbook& logbook, ThingId goes, ThingId stays, const std::string& kind,
                                  std::vector<Thing> core::Shelves::*shelf, const Join& join) {
    const core::Shelves shelves = logbook.shelves();
    const Thing* leaving = core::find(shelves.*shelf, goes);
    const Thing* staying = core::find(shelves.*shelf, stays);
    if (leaving == nullptr || staying == nullptr) return core::refused({notThere(kind, kind)});
    if (goes == stays) return core::refused({withItself(kind, calledAs(*staying))});
    const std::string words = "merge of " + kind + ' ' + calledAs(*leaving) + " into " + calledAs(*staying);
    return actUnlessRefused(logbook, words, [&](Writer& writer) {
        core::Refusals faults = join(writer, shelves, *leaving, *staying);
        if (faults.empty()) writer.remove(goes);
        return faults;
    });
}

/// Every batch that names the one by `member` is made to name the other.
template <class ThingId>
void renameInBatches(const Logbook& logbook, Writer& writer, ThingId core::Batch::*member, ThingId goes,
                     ThingId stays) {
    for (core::BatchLine& line : logbook.batchLines()) {
        if (line.batch.*member != goes) continue;
        line.batch.*member = stays;
        writer.change(line.batch);
    }
}

/// Every trial as `rename` makes it. Refused where two of its arms would become one.
template <class Rename>
core::Refusals renameInTrials(Writer& writer, const core::Shelves& shelves, const Rename& rename) {
    core::Refusals faults;
    for (const core::Trial& trial : shelves.trials) {
        core::Trial renamed = trial;
        for (core::TrialArm& arm : renamed.arms) rename(arm);
        for (core::TrialBatch& dealt : renamed.batches) rename(dealt);
        if (renamed == trial) continue;
        core::Trial arms = renamed;
        arms.batches.clear();  // those name things that are on their way
        core::Refusals found = core::faultsIn(arms, shelves);
        prefix(found, "Trial " + trial.name);
        append(faults, std::move(found));
        writer.change(renamed);
    }
    return faults;
}

/// For renameInTrials(): the one thing in place of the other, in whatever has such a member.
template <class Owner, class ThingId>
auto renaming(ThingId Owner::*member, ThingId goes, ThingId stays) {
    return [=](auto& named) {
        if constexpr (std::is_same_v<std::remove_cvref_t<decltype(named)>, Owner>)
            if (named.*member == goes) named.*member = stays;
    };
}

/// The merge of things that batches and the arms of trials name.
template <class Thing, class ThingId>
core::Result<Changes> mergeNamedByBatches(Logbook& logbook, ThingId goes, ThingId stays, const std::string& kind,
                                          std::vector<Thing> core::Shelves::*shelf, ThingId core::Batch::*member,
                                          ThingId core::TrialArm::*ofArm) {
    return mergeThings(logbook, goes, stays, kind, shelf,
                       [&](Writer& writer, const core::Shelves& shelves, const Thing&, const Thing&) {
                           renameInBatches(logbook, writer, member, goes, stays);
                           movePrices(writer, shelves, goes, stays);
                           return renameInTrials(writer, shelves, renaming(ofArm, goes, stays));
                       });
}

void renameInPlans(Writer& writer, const core::Shelves& shelves, core::PlantId goes, core::PlantId stays) {
    for (core::Plan plan : shelves.plans) {
        if (plan.plant != goes) continue;
        plan.plant = stays;
        writer.change(plan);
    }
}

/// Moves the stock plants of one plant to another; gives back by which those of an equal label are replaced.
std::vector<std::pair<core::StockPlantId, core::StockPlantId>> moveStockPlants(Writer& writer,
                                                                               const core::Shelves& shelves,
                                                                               core::PlantId goes,
                                                                               core::PlantId stays) {
    std::vector<std::pair<core::StockPlantId, core::StockPlantId>> replaced;
    for (const core::StockPlant& stockPlant : shelves.stockPlants) {
        if (stockPlant.plant != goes) continue;
        const auto equal = std::ranges::find_if(shelves.stockPlants, [&](const core::StockPlant& other) {
            return other.plant == stays && other.label == stockPlant.label;
        });
        if (equal != shelves.stockPlants.end()) {
            replaced.emplace_back(stockPlant.id, equal->id);
            writer.remove(stockPlant.id);
        } else {
            core::StockPlant moved = stockPlant;
            moved.plant = stays;
            writer.change(moved);
        }
    }
    return replaced;
}

core::Refusal otherKind(const std::string& field, const std::string& value, const std::string& allowed) {
    return {.field = field,
            .value = value,
            .allowed = allowed,
            .sentence = field + " is " + value + "; only " + allowed + " can be merged."};
}

std::string methodOf(const core::Station& station, const core::Shelves& shelves) {
    const core::Method* method = core::find(shelves.methods, station.method);
    return method == nullptr ? "a method that is gone" : method->name;
}

/// Batches, readings, care, prices and what loggers recorded move to another station, where the batches must find room.
core::Refusals moveStation(const Logbook& logbook, Writer& writer, const core::Shelves& shelves, core::StationId goes,
                           core::StationId stays) {
    core::Refusals faults;
    HeldPositions held(logbook);
    for (core::BatchRecord& record : logbook.batchRecordsAt(goes)) {
        record.batch.station = stays;
        core::Refusals found = held.faultsIn(record, shelves);
        prefix(found, record.batch.code);
        append(faults, std::move(found));
        writer.change(record.batch);
    }
    constexpr core::Moment earliest = std::chrono::sys_days(std::chrono::year(1800) / 1 / 1);
    constexpr core::Moment latest = std::chrono::sys_days(std::chrono::year(9999) / 12 / 31);
    for (core::Reading& reading : logbook.readings(goes, earliest, latest)) {
        reading.station = stays;
        writer.change(reading);
    }
    for (core::Care& care : logbook.care(goes, earliest, latest)) {
        care.station = stays;
        writer.change(care);
    }
    moveLoggerDays(logbook, writer, goes, stays);
    movePrices(writer, shelves, goes, stays);
    return faults;
}

/// One check with another cause in place of one; what it has of both becomes one sum.
core::Check withCause(core::Check check, core::LossCauseId goes, core::LossCauseId stays) {
    const auto leaving = std::ranges::find(check.losses, goes, &core::Loss::cause);
    if (leaving != check.losses.end()) {
        const auto staying = std::ranges::find(check.losses, stays, &core::Loss::cause);
        if (staying == check.losses.end()) {
            leaving->cause = stays;
        } else {
            staying->count += leaving->count;
            check.losses.erase(leaving);
        }
    }
    for (core::Finding& finding : check.findings)
        if (finding.cause == goes) finding.cause = stays;
    return check;
}

void renameInChecks(const Logbook& logbook, Writer& writer, core::LossCauseId goes, core::LossCauseId stays) {
    const auto batches =
        logbook.inside().with([&](Connection& connection) { return batchesWithLosses(connection, goes); });
    for (const core::BatchId id : batches) {
        const auto record = logbook.batch(id);
        if (!record) continue;
        for (const core::Check& check : record->checks) {
            const core::Check changed = withCause(check, goes, stays);
            if (changed != check) writer.change(changed);
        }
    }
}

}  // namespace

core::Result<Changes> mergePlants(Logbook& logbook, core::PlantId goes, core::PlantId stays) {
    return mergeThings(logbook, goes, stays, "plant", &core::Shelves::plants,
                       [&](Writer& writer, const core::Shelves& shelves, const core::Plant&, const core::Plant&) {
                           const auto replaced = moveStockPlants(writer, shelves, goes, stays);
                           for (core::BatchLine& line : logbook.batchLines()) {
                               if (line.batch.plant != goes) continue;
                               line.batch.plant = stays;
                               for (const auto& [from, to] : replaced)
                                   if (line.batch.stockPlant == from) line.batch.stockPlant = to;
                               writer.change(line.batch);
                           }
                           renameInPlans(writer, shelves, goes, stays);
                           moveOwnBands(writer, shelves, goes, stays);
                           return renameInTrials(writer, shelves, [&](auto& named) {
                               renaming(&core::TrialBatch::plant, goes, stays)(named);
                               for (const auto& [from, to] : replaced)
                                   renaming(&core::TrialBatch::stockPlant, from, to)(named);
                           });
                       });
}

core::Result<Changes> mergeStockPlants(Logbook& logbook, core::StockPlantId goes, core::StockPlantId stays) {
    return mergeThings(
        logbook, goes, stays, "stock plant", &core::Shelves::stockPlants,
        [&](Writer& writer, const core::Shelves& shelves, const core::StockPlant& leaving,
            const core::StockPlant& staying) {
            if (leaving.plant != staying.plant) {
                const core::Plant* plant = core::find(shelves.plants, leaving.plant);
                const std::string name = plant == nullptr ? "another plant" : core::fullName(*plant);
                return core::Refusals{otherKind("Plant of " + leaving.label, name, "stock plants of one plant")};
            }
            renameInBatches(logbook, writer, &core::Batch::stockPlant, goes, stays);
            return renameInTrials(writer, shelves, renaming(&core::TrialBatch::stockPlant, goes, stays));
        });
}

core::Result<Changes> mergeStations(Logbook& logbook, core::StationId goes, core::StationId stays) {
    return mergeThings(
        logbook, goes, stays, "station", &core::Shelves::stations,
        [&](Writer& writer, const core::Shelves& shelves, const core::Station& leaving, const core::Station& staying) {
            if (leaving.method != staying.method)
                return core::Refusals{
                    otherKind("Method of " + leaving.name, methodOf(leaving, shelves), "stations of one method")};
            core::Refusals faults = moveStation(logbook, writer, shelves, goes, stays);
            append(faults, renameInTrials(writer, shelves, renaming(&core::TrialBatch::station, goes, stays)));
            return faults;
        });
}

core::Result<Changes> mergeMedia(Logbook& logbook, core::MediumId goes, core::MediumId stays) {
    return mergeNamedByBatches(logbook, goes, stays, "medium", &core::Shelves::media, &core::Batch::medium,
                               &core::TrialArm::medium);
}

core::Result<Changes> mergeTreatments(Logbook& logbook, core::TreatmentId goes, core::TreatmentId stays) {
    return mergeNamedByBatches(logbook, goes, stays, "treatment", &core::Shelves::treatments, &core::Batch::treatment,
                               &core::TrialArm::treatment);
}

core::Result<Changes> mergeCuttingKinds(Logbook& logbook, core::CuttingKindId goes, core::CuttingKindId stays) {
    return mergeNamedByBatches(logbook, goes, stays, "kind of cutting", &core::Shelves::cuttingKinds,
                               &core::Batch::cuttingKind, &core::TrialArm::cuttingKind);
}

core::Result<Changes> mergeLossCauses(Logbook& logbook, core::LossCauseId goes, core::LossCauseId stays) {
    return mergeThings(logbook, goes, stays, "cause of loss", &core::Shelves::lossCauses,
                       [&](Writer& writer, const core::Shelves&, const core::LossCause&, const core::LossCause&) {
                           renameInChecks(logbook, writer, goes, stays);
                           return core::Refusals{};
                       });
}

}  // namespace db
