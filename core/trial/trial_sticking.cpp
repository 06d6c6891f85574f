// SPDX-License-Identifier: MIT
// From what was dealt to batches: batchesToStick() and faultsInSticking() of trial_rules.h.
#include <algorithm>

#include "core/field_faults.h"
#include "core/trial/trial_rules.h"

namespace core {

namespace {

Batch batchAsDealt(const TrialBatch& dealt, const Trial& trial, const Shelves& shelves) {
    Batch batch;
    batch.plant = dealt.plant;
    batch.stockPlant = dealt.stockPlant;
    batch.station = dealt.station;
    if (const Station* station = find(shelves.stations, dealt.station)) batch.method = station->method;
    const TrialArm& arm = trial.arms.at(static_cast<std::size_t>(dealt.arm));
    if (arm.method.isSet()) batch.method = arm.method;
    batch.treatment = arm.treatment;
    batch.medium = arm.medium;
    batch.cuttingKind = arm.cuttingKind;
    batch.stuck = dealt.stuck;
    batch.positions = dealt.positions;
    batch.trial = trial.id;
    batch.block = dealt.block;
    return batch;
}

/// Compares a batch with what was dealt, field by field.
class Sticking {
  public:
    explicit Sticking(Refusals& faults) : faults_(faults) {}

    void same(const std::string& field, const std::string& is, const std::string& dealt) {
        if (is != dealt)
            faults_.push_back({field, is, dealt + ", as dealt",
                               field + " is " + is + ", but " + dealt + " was dealt; only " + dealt + " is allowed."});
    }

    /// A thing of a shelf. What was not dealt may be anything.
    template <class ThingId, class Name>
    void same(const std::string& field, ThingId is, ThingId dealt, const Name& name) {
        if (dealt.isSet() && is != dealt) same(field, is.isSet() ? name(is) : "not given", name(dealt));
    }

  private:
    Refusals& faults_;
};

template <class Thing>
auto namesOf(const std::vector<Thing>& shelf) {
    return [&shelf](auto id) {
        const Thing* thing = find(shelf, id);
        return thing == nullptr ? std::string("one that this logbook does not have") : thing->name;
    };
}

}  // namespace

std::vector<PlannedBatch> batchesToStick(const Trial& trial, int session, const Shelves& shelves) {
    std::vector<PlannedBatch> planned;
    for (const TrialBatch& dealt : trial.batches)
        if (dealt.session == session && !dealt.batch.isSet())
            planned.push_back({.number = dealt.number, .batch = batchAsDealt(dealt, trial, shelves)});
    return planned;
}

Refusals faultsInSticking(const PlannedBatch& planned, const Trial& trial, const Shelves& shelves) {
    const auto found = std::ranges::find(trial.batches, planned.number, &TrialBatch::number);
    if (found == trial.batches.end() || found->batch.isSet())
        return {outOfRange(
            "Dealt batch",
            std::to_string(planned.number) +
                (found == trial.batches.end() ? ", which the trial does not have" : ", which is stuck already"),
            "one that is still to be stuck")};
    const Batch& is = planned.batch;
    const Batch dealt = batchAsDealt(*found, trial, shelves);
    Refusals faults;
    Sticking sticking(faults);
    sticking.same("Plant", is.plant, dealt.plant, [&shelves](PlantId id) {
        const Plant* plant = find(shelves.plants, id);
        return plant == nullptr ? std::string("one that this logbook does not have") : fullName(*plant);
    });
    sticking.same("Stock plant", is.stockPlant, dealt.stockPlant, [&shelves](StockPlantId id) {
        const StockPlant* mother = find(shelves.stockPlants, id);
        return mother == nullptr ? std::string("one that this logbook does not have") : mother->label;
    });
    sticking.same("Station", is.station, dealt.station, namesOf(shelves.stations));
    sticking.same("Method", is.method, dealt.method, namesOf(shelves.methods));
    sticking.same("Treatment", is.treatment, dealt.treatment, namesOf(shelves.treatments));
    sticking.same("Medium", is.medium, dealt.medium, namesOf(shelves.media));
    sticking.same("Kind of cutting", is.cuttingKind, dealt.cuttingKind, namesOf(shelves.cuttingKinds));
    sticking.same("Stuck", std::to_string(is.stuck), std::to_string(dealt.stuck));
    sticking.same("Positions", is.positions.empty() ? "not given" : is.positions,
                  dealt.positions.empty() ? "not given" : dealt.positions);
    sticking.same("Block", quotable(is.block), quotable(dealt.block));
    return faults;
}

}  // namespace core
