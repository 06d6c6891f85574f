// SPDX-License-Identifier: MIT
#include "core/planning/plan_rules.h"

#include "core/batch/day_rules.h"
#include "core/field_faults.h"

namespace core {

Refusals faultsIn(const Plan& plan, const Shelves& shelves) {
    const Date lastDay = std::chrono::year{9999} / 12 / 31;
    Refusals faults;
    if (find(shelves.plants, plan.plant) == nullptr) faults.push_back(missingRefusal("Plant", plan.plant.value));
    if (plan.method.isSet() && find(shelves.methods, plan.method) == nullptr)
        faults.push_back(missingRefusal("Method", plan.method.value));
    collect(faults, faultInWhole("Wanted", plan.wanted, 1, mostPlantsWanted));
    collect(faults, faultInShare("Assurance", plan.assurance));
    if (plan.needBy) collect(faults, faultInDay("Needed by", *plan.needBy, lastDay));
    if (!(plan.pottedLivePercent > 0 && plan.pottedLivePercent <= 100))
        faults.push_back(
            outOfRange("Of 100 potted, live", figureText(plan.pottedLivePercent), "more than 0 and up to 100"));
    collect(faults, faultInWhole("Days of hardening", plan.hardeningDays, 0, longestDays));
    collect(faults, faultInWhole("Days of growing on", plan.pottingDays, 0, longestDays));
    collect(faults, faultInNote("Note", plan.note));
    return faults;
}

}  // namespace core
