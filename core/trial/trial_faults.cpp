// SPDX-License-Identifier: MIT
// What a trial must obey as it stands: faultsIn() of shelf_rules.h, and faultsInDesign().
#include <set>

#include "core/batch/batch_rules.h"
#include "core/field_faults.h"
#include "core/shelf_rules.h"
#include "core/trial/allocate_trial.h"
#include "core/trial/trial_rules.h"

namespace core {

namespace {

std::string fieldOf(Factor factor) {
    switch (factor) {
        case Factor::Method:
            return "Method";
        case Factor::Treatment:
            return "Treatment";
        case Factor::Medium:
            return "Medium";
        case Factor::CuttingKind:
            return "Kind of cutting";
    }
    return "";
}

std::int64_t idOf(const TrialArm& arm, Factor factor) {
    switch (factor) {
        case Factor::Method:
            return arm.method.value;
        case Factor::Treatment:
            return arm.treatment.value;
        case Factor::Medium:
            return arm.medium.value;
        case Factor::CuttingKind:
            return arm.cuttingKind.value;
    }
    return 0;
}

int idsIn(const TrialArm& arm) {
    return (arm.method.isSet() ? 1 : 0) + (arm.treatment.isSet() ? 1 : 0) + (arm.medium.isSet() ? 1 : 0) +
           (arm.cuttingKind.isSet() ? 1 : 0);
}

bool isOnShelf(const TrialArm& arm, Factor factor, const Shelves& shelves) {
    switch (factor) {
        case Factor::Method:
            return find(shelves.methods, arm.method) != nullptr;
        case Factor::Treatment:
            return find(shelves.treatments, arm.treatment) != nullptr;
        case Factor::Medium:
            return find(shelves.media, arm.medium) != nullptr;
        case Factor::CuttingKind:
            return find(shelves.cuttingKinds, arm.cuttingKind) != nullptr;
    }
    return false;
}

void judgeArm(const TrialArm& arm, std::size_t number, Factor factor, const Shelves& shelves, Refusals& faults) {
    const std::string field = fieldOf(factor) + " of arm " + std::to_string(number);
    const std::int64_t id = idOf(arm, factor);
    if (id == 0 || !isOnShelf(arm, factor, shelves)) return faults.push_back(missingRefusal(field, id));
    if (idsIn(arm) > 1) faults.push_back(outOfRange(field, "one of several things", "nothing but its factor"));
}

void judgeArms(const Trial& trial, const Shelves& shelves, Refusals& faults) {
    const int count = static_cast<int>(trial.arms.size());
    if (!trial.factor) {
        if (count > 0 || !trial.batches.empty())
            faults.push_back(outOfRange("Factor", "not given", "method, treatment, medium or cutting"));
        return;
    }
    if (count < 2 || trial.arms.size() > mostArms)
        faults.push_back(
            {"Arms", std::to_string(count), "2 to 26",
             "Arms are " + std::to_string(count) + "; 2 to 26 are allowed, or there is nothing to compare."});
    std::set<std::int64_t> seen;
    for (std::size_t arm = 0; arm < trial.arms.size(); ++arm) {
        judgeArm(trial.arms[arm], arm + 1, *trial.factor, shelves, faults);
        const std::int64_t id = idOf(trial.arms[arm], *trial.factor);
        if (id != 0 && !seen.insert(id).second)
            faults.push_back(outOfRange(fieldOf(*trial.factor) + " of arm " + std::to_string(arm + 1),
                                        quotable(nameOf(trial.arms[arm], *trial.factor, shelves)) + " once more",
                                        "one that no other arm has"));
    }
}

void judgeBlocksAndCrossing(const Trial& trial, Refusals& faults) {
    const bool isOfMethods = trial.factor == Factor::Method;
    if (isOfMethods && trial.blockedBy == BlockedBy::StationSide)
        faults.push_back(outOfRange("Blocks", "station sides, but a station has one method at a time",
                                    "nothing, plant, stock plant or session"));
    if (trial.isCrossedOver && trial.factor && !isOfMethods)
        faults.push_back(
            outOfRange("Crossed over", "yes, but arms of this factor stand side by side at each station", "no"));
}

void judgeMeasure(const Trial& trial, Refusals& faults) {
    if (trial.horizonDay) collect(faults, faultInWhole("Horizon day", *trial.horizonDay, 1, longestDays));
    if (trial.margin) collect(faults, faultInShare("Margin", *trial.margin));
    if (!trial.margin && trial.measure == TrialMeasure::AsGoodAs)
        faults.push_back(
            {"Margin", "not given", "more than 0 and less than 1",
             "Margin is not given, but what is as good as another needs one; more than 0 and less than 1 is "
             "allowed."});
}

void judgeDealt(const TrialBatch& dealt, const Trial& trial, const Shelves& shelves, Refusals& faults) {
    const std::string about = "Dealt batch " + std::to_string(dealt.number) + ": ";
    collect(faults, faultInWhole(about + "Session", dealt.session, 1, mostSessions));
    collect(faults, faultInWhole(about + "Arm", dealt.arm, 0, static_cast<int>(trial.arms.size()) - 1));
    collect(faults, faultInWhole(about + "Stuck", dealt.stuck, 1, mostStuck));
    collect(faults, faultInLine(about + "Block", dealt.block));
    if (find(shelves.stations, dealt.station) == nullptr)
        faults.push_back(missingRefusal(about + "Station", dealt.station.value));
    if (dealt.plant.isSet() && find(shelves.plants, dealt.plant) == nullptr)
        faults.push_back(missingRefusal(about + "Plant", dealt.plant.value));
    const StockPlant* mother = find(shelves.stockPlants, dealt.stockPlant);
    if (dealt.stockPlant.isSet() && (mother == nullptr || mother->plant != dealt.plant))
        faults.push_back(missingRefusal(about + "Stock plant", dealt.stockPlant.value));
    const auto positions = positionsFrom(dealt.positions);
    const bool isRight = positions && (positions->empty() || static_cast<int>(positions->size()) == dealt.stuck);
    if (!isRight)
        faults.push_back(outOfRange(about + "Positions", quotable(dealt.positions),
                                    "a list of " + std::to_string(dealt.stuck) + " such as A1-A6, B2"));
}

void judgeChange(const TrialChange& change, Refusals& faults) {
    collect(faults, faultInName("What was changed", change.what));
    collect(faults, faultInNote("What it was", change.was));
    collect(faults, faultInNote("What it became", change.became));
    collect(faults, faultInNote("Reason", change.reason));
    if (isBlank(change.reason))
        faults.push_back({"Reason", quotable(change.reason), "a few words",
                          "Reason is blank, but the trial was changed after its first check; a few words are needed."});
}

}  // namespace

Refusals faultsIn(const Trial& trial, const Shelves& shelves) {
    Refusals faults = faultsInName(trial, shelves.trials);
    collect(faults, faultInNote("Question", trial.question));
    judgeMeasure(trial, faults);
    if (trial.perArm) collect(faults, faultInWhole("Per arm", *trial.perArm, 1, mostStuck));
    judgeBlocksAndCrossing(trial, faults);
    judgeArms(trial, shelves, faults);
    std::set<int> numbers;
    for (const TrialBatch& dealt : trial.batches) {
        judgeDealt(dealt, trial, shelves, faults);
        if (!numbers.insert(dealt.number).second || dealt.number < 1)
            faults.push_back(outOfRange("Number", std::to_string(dealt.number), "a number of 1 or more, each once,"));
    }
    for (const TrialChange& change : trial.changes) judgeChange(change, faults);
    collect(faults, faultInNote("Note", trial.note));
    return faults;
}

Refusals faultsInDesign(const Trial& trial, const Shelves& shelves) {
    Refusals faults = faultsIn(trial, shelves);
    const auto needs = [&faults](bool isThere, const std::string& field, const std::string& allowed) {
        if (!isThere) faults.push_back(outOfRange(field, "not given", allowed));
    };
    needs(trial.factor.has_value(), "Factor", "method, treatment, medium or cutting");
    needs(trial.horizonDay.has_value(), "Horizon day", rangeText(1, longestDays));
    needs(trial.perArm.has_value(), "Per arm", rangeText(1, mostStuck));
    return faults;
}

std::string nameOf(const TrialArm& arm, Factor factor, const Shelves& shelves) {
    const auto named = [](const auto* thing) { return thing == nullptr ? std::string("not set") : thing->name; };
    switch (factor) {
        case Factor::Method:
            return named(find(shelves.methods, arm.method));
        case Factor::Treatment:
            return named(find(shelves.treatments, arm.treatment));
        case Factor::Medium:
            return named(find(shelves.media, arm.medium));
        case Factor::CuttingKind:
            return named(find(shelves.cuttingKinds, arm.cuttingKind));
    }
    return "";
}

}  // namespace core
