// SPDX-License-Identifier: MIT
#include "core/causes/trial_proposal.h"

#include <algorithm>

namespace core {

namespace {

constexpr double proposedMargin = 0.2;
constexpr const char* freshLot = "new lot";

template <class Thing>
bool isTaken(const std::vector<Thing>& things, const std::string& name) {
    return std::ranges::any_of(things, [&name](const Thing& thing) { return thing.name == name; });
}

template <class Thing>
std::string freeName(const std::vector<Thing>& things, const std::string& name) {
    std::string free = name;
    for (int number = 2; isTaken(things, free); ++number) free = name + " " + std::to_string(number);
    return free;
}

/// On the shelf and in use under that name, or `changed` with a name that is free.
template <class Thing>
std::optional<Thing> toBeAdded(const std::vector<Thing>& things, Thing changed, const std::string& name,
                               decltype(Thing::id)& idInUse) {
    const auto found =
        std::ranges::find_if(things, [&name](const Thing& thing) { return thing.name == name && !thing.isRetired; });
    if (found != things.end()) {
        idInUse = found->id;
        return {};
    }
    changed.id = {};
    changed.name = freeName(things, name);
    changed.isRetired = false;
    return changed;
}

TrialProposal proposalBetween(Factor factor, const std::string& first, const std::string& second, const Batch& batch,
                              const Shelves& shelves, int horizonDay) {
    TrialProposal proposal;
    proposal.plant = batch.plant;
    Trial& trial = proposal.trial;
    trial.factor = factor;
    trial.margin = proposedMargin;
    trial.horizonDay = horizonDay;
    trial.measure = TrialMeasure::MoreRooted;
    trial.blockedBy = BlockedBy::Session;
    trial.arms.resize(2);
    trial.name = freeName(shelves.trials, second + " or not, after " + batch.code);
    const Plant* plant = find(shelves.plants, batch.plant);
    trial.question = "Does " + (plant != nullptr ? fullName(*plant) : std::string("the plant")) +
                     " root better with \u201c" + second + "\u201d than with \u201c" + first + "\u201d?";
    proposal.inWords = "On the same days, stick half in \u201c" + first + "\u201d and half in \u201c" + second +
                       "\u201d, dealt by chance, and count them on day " + std::to_string(horizonDay) + ".";
    return proposal;
}

/// Where a thing of one kind stands in an arm, and where it waits until it is on the shelf.
template <class Thing, class ThingId>
struct ArmOf {
    Factor factor;
    const std::vector<Thing>& shelf;
    ThingId TrialArm::*place;
    std::optional<Thing> TrialProposal::*toAdd;
};

/// What was used against the same with a change. Nothing where the batch names none.
template <class Thing, class ThingId>
std::optional<TrialProposal> proposeChanged(const ArmOf<Thing, ThingId>& arm, ThingId used, const std::string& change,
                                            const Batch& batch, const Shelves& shelves, int horizonDay) {
    const Thing* thing = find(arm.shelf, used);
    if (thing == nullptr) return {};
    const std::string name = thing->name + ", " + change;
    ThingId inUse;
    auto added = toBeAdded(arm.shelf, *thing, name, inUse);
    TrialProposal proposal =
        proposalBetween(arm.factor, thing->name, added ? added->name : name, batch, shelves, horizonDay);
    proposal.trial.arms[0].*arm.place = used;
    proposal.trial.arms[1].*arm.place = inUse;
    proposal.*arm.toAdd = std::move(added);
    return proposal;
}

}  // namespace

std::optional<TrialProposal> proposeChangedMethod(const Batch& batch, const Shelves& shelves, int horizonDay,
                                                  const std::string& change) {
    const ArmOf<Method, MethodId> arm{Factor::Method, shelves.methods, &TrialArm::method, &TrialProposal::methodToAdd};
    return proposeChanged(arm, batch.method, change, batch, shelves, horizonDay);
}

std::optional<TrialProposal> proposeNewHormone(const Batch& batch, const Shelves& shelves, int horizonDay) {
    const ArmOf<Treatment, TreatmentId> arm{Factor::Treatment, shelves.treatments, &TrialArm::treatment,
                                            &TrialProposal::treatmentToAdd};
    return proposeChanged(arm, batch.treatment, freshLot, batch, shelves, horizonDay);
}

std::optional<TrialProposal> proposeNewMedium(const Batch& batch, const Shelves& shelves, int horizonDay) {
    const ArmOf<Medium, MediumId> arm{Factor::Medium, shelves.media, &TrialArm::medium, &TrialProposal::mediumToAdd};
    return proposeChanged(arm, batch.medium, freshLot, batch, shelves, horizonDay);
}

}  // namespace core
