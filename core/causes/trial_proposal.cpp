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

}  // namespace

std::optional<TrialProposal> proposeChangedMethod(const Batch& batch, const Shelves& shelves, int horizonDay,
                                                  const std::string& change) {
    const Method* method = find(shelves.methods, batch.method);
    if (method == nullptr) return {};
    const std::string name = method->name + ", " + change;
    MethodId inUse;
    auto added = toBeAdded(shelves.methods, *method, name, inUse);
    TrialProposal proposal =
        proposalBetween(Factor::Method, method->name, added ? added->name : name, batch, shelves, horizonDay);
    proposal.trial.arms[0].method = method->id;
    proposal.trial.arms[1].method = inUse;
    proposal.methodToAdd = std::move(added);
    return proposal;
}

std::optional<TrialProposal> proposeNewHormone(const Batch& batch, const Shelves& shelves, int horizonDay) {
    const Treatment* treatment = find(shelves.treatments, batch.treatment);
    if (treatment == nullptr) return {};
    const std::string name = treatment->name + ", " + freshLot;
    TreatmentId inUse;
    auto added = toBeAdded(shelves.treatments, *treatment, name, inUse);
    TrialProposal proposal =
        proposalBetween(Factor::Treatment, treatment->name, added ? added->name : name, batch, shelves, horizonDay);
    proposal.trial.arms[0].treatment = treatment->id;
    proposal.trial.arms[1].treatment = inUse;
    proposal.treatmentToAdd = std::move(added);
    return proposal;
}

std::optional<TrialProposal> proposeNewMedium(const Batch& batch, const Shelves& shelves, int horizonDay) {
    const Medium* medium = find(shelves.media, batch.medium);
    if (medium == nullptr) return {};
    const std::string name = medium->name + ", " + freshLot;
    MediumId inUse;
    auto added = toBeAdded(shelves.media, *medium, name, inUse);
    TrialProposal proposal =
        proposalBetween(Factor::Medium, medium->name, added ? added->name : name, batch, shelves, horizonDay);
    proposal.trial.arms[0].medium = medium->id;
    proposal.trial.arms[1].medium = inUse;
    proposal.mediumToAdd = std::move(added);
    return proposal;
}

}  // namespace core
