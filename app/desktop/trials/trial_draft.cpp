// SPDX-License-Identifier: MIT
#include "app/desktop/trials/trial_draft.h"

#include <algorithm>
#include <map>
#include <set>

#include "app/desktop/workspace.h"
#include "db/actions/trial_actions.h"

namespace desktop {

namespace {

constexpr int usualPerArm = 24;
constexpr double usualMargin = 0.2;

/// The design that was set last; nullptr where none was ever.
const core::Trial* lastPlanned(const core::Shelves& shelves) {
    const core::Trial* last = nullptr;
    for (const core::Trial& trial : shelves.trials)
        if (trial.factor && (last == nullptr || !last->setOn || (trial.setOn && *trial.setOn >= *last->setOn)))
            last = &trial;
    return last;
}

const core::StationRoom* roomOf(core::StationId station, const std::vector<core::StationRoom>& rooms) {
    const auto found = std::ranges::find(rooms, station, &core::StationRoom::station);
    return found == rooms.end() ? nullptr : &*found;
}

void layOut(TrialDraft& draft, const std::vector<core::StationId>& stations,
            const std::vector<core::StationRoom>& rooms) {
    for (const core::StationId station : stations)
        if (const core::StationRoom* room = roomOf(station, rooms)) draft.layout.stations.push_back(*room);
}

template <class Thing, class Member>
void offerArms(const std::vector<Thing>& things, Member member, const core::Trial& trial,
               std::vector<core::TrialArm>& arms) {
    for (const Thing& thing : things) {
        core::TrialArm arm;
        arm.*member = thing.id;
        if (!thing.isRetired || std::ranges::find(trial.arms, arm) != trial.arms.end()) arms.push_back(arm);
    }
}

template <class Thing>
void addMade(std::optional<Thing>& thing, std::vector<Thing>& shelf, decltype(Thing::id)& inArm) {
    if (!thing) return;
    thing->id.value = db::newId();
    inArm = thing->id;
    shelf.push_back(*thing);
    thing.reset();
}

/// As many as are usual, or as many as there is room for.
int perArmFor(const core::Trial& trial, const core::TrialLayout& layout) {
    core::Trial tried = trial;
    tried.perArm = trial.perArm.value_or(usualPerArm);
    if (core::allocateTrial(tried, layout, 1)) return *tried.perArm;
    const int most = core::mostPerArm(trial, layout, 1);
    return most > 0 ? std::min(most, *tried.perArm) : *tried.perArm;
}

std::string formField(const std::string& field) {
    if (field.find(" of arm ") != std::string::npos && !field.starts_with("Stations")) return "Arms";
    for (const char* start : {"Stations", "Columns of ", "Free places at "})
        if (field.starts_with(start)) return "Stations";
    for (const char* start : {"Block", "Plants", "Plant of block", "Stock plant of block", "Cuttings of "})
        if (field.starts_with(start)) return "Blocks";
    return field;
}

}  // namespace

double TrialDraft::batchesPerArm() const {
    if (const auto dealt = core::allocateTrial(trial, layout, 1)) {
        if (!dealt->empty() && !trial.arms.empty())
            return std::max(1.0, static_cast<double>(dealt->size()) / static_cast<double>(trial.arms.size()));
    }
    // Not to be dealt as it stands: one batch a station and session, arms apart sharing the stations.
    const double stations = static_cast<double>(layout.stations.size());
    const double sharing =
        trial.factor == core::Factor::Method && !trial.arms.empty() ? static_cast<double>(trial.arms.size()) : 1.0;
    return std::max(1.0, stations / sharing * layout.sessions);
}

std::vector<core::PlantId> TrialDraft::plants() const {
    std::set<core::PlantId> plants;
    for (const core::TrialBlock& block : layout.blocks)
        if (block.plant.isSet()) plants.insert(block.plant);
    return {plants.begin(), plants.end()};
}

TrialDraft draftOf(const core::Trial& trial, const std::vector<core::StationRoom>& rooms) {
    TrialDraft draft{.trial = trial};
    std::vector<core::StationId> stations;
    for (const core::TrialBatch& dealt : trial.batches) {
        if (std::ranges::find(stations, dealt.station) == stations.end()) stations.push_back(dealt.station);
        const auto isOfIt = [&](const core::TrialBlock& block) {
            return block.plant == dealt.plant && block.stockPlant == dealt.stockPlant;
        };
        if (dealt.plant.isSet() && std::ranges::none_of(draft.layout.blocks, isOfIt))
            draft.layout.blocks.push_back(
                {.name = dealt.block, .plant = dealt.plant, .stockPlant = dealt.stockPlant, .cuttings = 0});
    }
    layOut(draft, stations, rooms);
    draft.layout.sessions = std::max(1, core::sessionsOf(trial));
    return draft;
}

TrialDraft freshDraft(const core::Shelves& shelves, const std::vector<core::StationRoom>& rooms) {
    if (const core::Trial* last = lastPlanned(shelves)) {
        TrialDraft draft = draftOf(*last, rooms);
        core::Trial& trial = draft.trial;
        trial.id = {};
        trial.question.clear();
        trial.note.clear();
        trial.allocationSeed.reset();
        trial.setOn.reset();
        trial.batches.clear();
        trial.changes.clear();
        trial.name = proposedName(trial, shelves);
        return draft;
    }
    TrialDraft draft;
    core::Trial& trial = draft.trial;
    trial.factor = core::Factor::Method;
    trial.arms = armsToChooseFrom(core::Factor::Method, trial, shelves);
    if (trial.arms.size() > 2) trial.arms.resize(2);
    trial.horizonDay = shelves.facts.horizonDay;
    trial.margin = usualMargin;
    trial.perArm = usualPerArm;
    trial.name = proposedName(trial, shelves);
    layOut(draft, usualStations(trial, rooms), rooms);
    return draft;
}

TrialDraft draftOf(const core::TrialProposal& proposal, const core::Shelves& shelves,
                   const std::vector<core::StationRoom>& rooms) {
    TrialDraft draft{.trial = proposal.trial};
    core::Trial& trial = draft.trial;
    if (const core::Plant* plant = core::find(shelves.plants, proposal.plant))
        draft.layout.blocks.push_back({.name = core::fullName(*plant), .plant = plant->id});
    layOut(draft, usualStations(trial, rooms), rooms);
    const auto hasStation = [&draft](const core::TrialArm& arm) {
        return std::ranges::find(draft.layout.stations, arm.method, &core::StationRoom::method) !=
               draft.layout.stations.end();
    };
    if (trial.factor == core::Factor::Method && !std::ranges::all_of(trial.arms, hasStation))
        trial.isCrossedOver = draft.layout.stations.size() >= trial.arms.size();
    if (trial.blockedBy == core::BlockedBy::Session || trial.isCrossedOver)
        draft.layout.sessions = 2 * static_cast<int>(trial.arms.size());  // fewer batches give no verdict
    trial.perArm = perArmFor(trial, draft.layout);
    return draft;
}

void makeReady(core::TrialProposal& proposal, core::Shelves& made) {
    for (core::TrialArm& arm : proposal.trial.arms) {
        if (!arm.method.isSet()) addMade(proposal.methodToAdd, made.methods, arm.method);
        if (!arm.treatment.isSet()) addMade(proposal.treatmentToAdd, made.treatments, arm.treatment);
        if (!arm.medium.isSet()) addMade(proposal.mediumToAdd, made.media, arm.medium);
    }
}

std::vector<core::StationRoom> roomsNow(Workspace& workspace) {
    std::vector<core::Station> stations;
    for (const core::Station& station : workspace.shelves().stations)
        if (!station.isRetired) stations.push_back(station);
    std::ranges::stable_sort(stations, {}, &core::Station::walkingOrder);
    std::vector<core::StationRoom> rooms;
    workspace.attempt([&](db::Logbook& logbook) {
        for (const core::Station& station : stations) rooms.push_back(db::roomAt(logbook, station));
    });
    return rooms;
}

std::vector<core::StationId> usualStations(const core::Trial& design, const std::vector<core::StationRoom>& rooms) {
    std::map<core::MethodId, int> places;
    for (const core::StationRoom& room : rooms) places[room.method] += room.places;
    core::MethodId roomiest;
    for (const auto& [method, count] : places)
        if (!roomiest.isSet() || count > places[roomiest]) roomiest = method;
    std::vector<core::StationId> stations;
    for (const core::StationRoom& room : rooms) {
        const bool isOfArms = std::ranges::find(design.arms, room.method, &core::TrialArm::method) != design.arms.end();
        const bool isUsual = design.factor == core::Factor::Method ? isOfArms : room.method == roomiest;
        if (isUsual && room.places > 0) stations.push_back(room.station);
    }
    return stations;
}

std::string proposedName(const core::Trial& trial, const core::Shelves& shelves) {
    std::string name;
    for (const core::TrialArm& arm : trial.arms)
        if (trial.factor) name += (name.empty() ? "" : " or ") + core::nameOf(arm, *trial.factor, shelves);
    const auto isTaken = [&](const std::string& tried) {
        return std::ranges::any_of(
            shelves.trials, [&](const core::Trial& other) { return other.id != trial.id && other.name == tried; });
    };
    std::string free = name;
    for (int number = 2; !name.empty() && isTaken(free); ++number) free = name + " (" + std::to_string(number) + ")";
    return free;
}

std::int64_t idOf(const core::TrialArm& arm) {
    return arm.method.value + arm.treatment.value + arm.medium.value + arm.cuttingKind.value;  // one of them is set
}

std::vector<core::TrialArm> armsToChooseFrom(core::Factor factor, const core::Trial& trial,
                                             const core::Shelves& shelves) {
    std::vector<core::TrialArm> arms;
    switch (factor) {
        case core::Factor::Method:
            offerArms(shelves.methods, &core::TrialArm::method, trial, arms);
            break;
        case core::Factor::Treatment:
            offerArms(shelves.treatments, &core::TrialArm::treatment, trial, arms);
            break;
        case core::Factor::Medium:
            offerArms(shelves.media, &core::TrialArm::medium, trial, arms);
            break;
        case core::Factor::CuttingKind:
            offerArms(shelves.cuttingKinds, &core::TrialArm::cuttingKind, trial, arms);
            break;
    }
    return arms;
}

core::Refusals underFormFields(core::Refusals refusals) {
    core::Refusals faults;
    for (core::Refusal& refusal : refusals) {
        refusal.field = formField(refusal.field);
        const auto isSaid = [&](const core::Refusal& other) { return other.field == refusal.field; };
        if (std::ranges::none_of(faults, isSaid)) faults.push_back(std::move(refusal));
    }
    return faults;
}

core::Refusals faultsIn(const TrialDraft& draft, const core::Shelves& shelves) {
    core::Refusals faults = core::faultsInDesign(draft.trial, shelves);
    if (const auto dealt = core::allocateTrial(draft.trial, draft.layout, draft.trial.allocationSeed.value_or(1));
        !dealt)
        for (const core::Refusal& fault : dealt.error()) faults.push_back(fault);
    return underFormFields(std::move(faults));
}

}  // namespace desktop
