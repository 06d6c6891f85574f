// SPDX-License-Identifier: MIT
// Why a trial can't be dealt to a layout: faultsIn() of allocate_trial.h.
#include <algorithm>
#include <set>

#include "core/batch/batch_rules.h"
#include "core/field_faults.h"
#include "core/trial/allocate_trial.h"

namespace core {

namespace {

bool isByPlants(const Trial& design) {
    return design.blockedBy == BlockedBy::Plant || design.blockedBy == BlockedBy::StockPlant;
}

void judgeQuestion(const Trial& design, Refusals& faults) {
    if (!design.factor) faults.push_back(outOfRange("Factor", "not given", "method, treatment, medium or cutting"));
    const int arms = static_cast<int>(design.arms.size());
    if (arms < 2)
        faults.push_back(
            {"Arms", std::to_string(arms), "2 to 26", "Arms are " + std::to_string(arms) + "; 2 to 26 are allowed."});
    if (!design.perArm)
        faults.push_back(outOfRange("Per arm", "not given", rangeText(1, mostStuck)));
    else
        collect(faults, faultInWhole("Per arm", *design.perArm, 1, mostStuck));
}

void judgeSessions(const Trial& design, const TrialLayout& layout, Refusals& faults) {
    const int fewest = design.blockedBy == BlockedBy::Session ? 2 : 1;
    collect(faults, faultInWhole("Sessions", layout.sessions, fewest, mostSessions));
    const int arms = static_cast<int>(design.arms.size());
    if (!design.isCrossedOver || arms < 2 || layout.sessions % arms == 0) return;
    faults.push_back({"Sessions", std::to_string(layout.sessions), "a multiple of " + std::to_string(arms),
                      "Sessions are " + std::to_string(layout.sessions) + "; a multiple of " + std::to_string(arms) +
                          " is allowed, so that each station has each method equally often."});
}

void judgeStations(const Trial& design, const TrialLayout& layout, Refusals& faults) {
    std::set<StationId> seen;
    for (const StationRoom& room : layout.stations) {
        if (!room.station.isSet() || !seen.insert(room.station).second)
            faults.push_back(outOfRange("Stations", quotable(room.name) + " once more", "each once"));
        if (design.blockedBy == BlockedBy::StationSide && room.columns < 2)
            faults.push_back(outOfRange("Columns of " + room.name, std::to_string(room.columns),
                                        "2 or more, or a station has no sides,"));
    }
    if (layout.stations.empty())
        faults.push_back({"Stations", "none", "at least one", "Stations are none; at least one is needed."});
}

void judgeMethods(const Trial& design, const TrialLayout& layout, Refusals& faults) {
    if (design.factor != Factor::Method) return;
    if (design.isCrossedOver) {
        if (layout.stations.size() < design.arms.size())
            faults.push_back(
                {"Stations", std::to_string(layout.stations.size()), "at least " + std::to_string(design.arms.size()),
                 "Stations are " + std::to_string(layout.stations.size()) + "; at least " +
                     std::to_string(design.arms.size()) + " are needed, so that each session has each method."});
        return;
    }
    for (std::size_t arm = 0; arm < design.arms.size(); ++arm) {
        if (std::ranges::count(layout.stations, design.arms[arm].method, &StationRoom::method) > 0) continue;
        const std::string field = "Stations of arm " + std::to_string(arm + 1);
        faults.push_back(
            {field, "none", "at least one of its method", field + " are none; at least one of its method is needed."});
    }
}

void judgeBlockNames(const TrialLayout& layout, Refusals& faults) {
    std::set<std::string> seen;
    for (const TrialBlock& block : layout.blocks) {
        collect(faults, faultInName("Block", block.name));
        if (!seen.insert(block.name).second)
            faults.push_back(outOfRange("Block", quotable(block.name) + " once more", "each block once"));
    }
}

/// Either nobody said how many there are of each, or all did, and they are what the arms need.
void judgeCuttings(const Trial& design, const TrialLayout& layout, Refusals& faults) {
    const auto isUnsaid = [](const TrialBlock& block) { return block.cuttings == 0; };
    if (std::ranges::all_of(layout.blocks, isUnsaid)) return;
    int sum = 0;
    for (const TrialBlock& block : layout.blocks) {
        collect(faults, faultInWhole("Cuttings of " + block.name, block.cuttings, 1, mostStuck));
        sum += std::clamp(block.cuttings, 0, mostStuck);
    }
    const int arms = static_cast<int>(design.arms.size());
    const int most = arms * design.perArm.value_or(1);
    collect(faults, faultInWhole("Cuttings of all blocks", sum, most - arms + 1, most));
}

void judgeBlocks(const Trial& design, const TrialLayout& layout, Refusals& faults) {
    const int blocks = static_cast<int>(layout.blocks.size());
    if (!isByPlants(design)) {
        if (blocks > 1)
            faults.push_back(
                {"Plants", std::to_string(blocks), "one, or blocks of plants",
                 "Plants are " + std::to_string(blocks) + "; one is allowed, or a trial that is blocked by plants."});
        return;
    }
    if (blocks == 0 || blocks > 1000)
        faults.push_back({"Blocks", std::to_string(blocks), rangeText(1, 1000),
                          "Blocks are " + std::to_string(blocks) + "; 1 to 1000 are allowed."});
    judgeBlockNames(layout, faults);
    for (const TrialBlock& block : layout.blocks) {
        if (!block.plant.isSet()) faults.push_back(missingRefusal("Plant of block " + block.name, 0));
        if (design.blockedBy == BlockedBy::StockPlant && !block.stockPlant.isSet())
            faults.push_back(missingRefusal("Stock plant of block " + block.name, 0));
    }
    if (design.arms.size() >= 2 && design.perArm && *design.perArm >= 1 && *design.perArm <= mostStuck)
        judgeCuttings(design, layout, faults);
}

}  // namespace

Refusals faultsIn(const Trial& design, const TrialLayout& layout) {
    Refusals faults;
    judgeQuestion(design, faults);
    judgeSessions(design, layout, faults);
    judgeStations(design, layout, faults);
    judgeMethods(design, layout, faults);
    judgeBlocks(design, layout, faults);
    return faults;
}

}  // namespace core
