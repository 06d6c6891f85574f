// SPDX-License-Identifier: MIT
#include "db/actions/plan_actions.h"

#include "core/planning/plan_rules.h"
#include "db/actions/ask_first.h"

namespace db {

namespace {

/// "plan for 40 Hebe albicans"
std::string calledPlan(const core::Plan& plan, const core::Shelves& shelves) {
    const core::Plant* plant = core::find(shelves.plants, plan.plant);
    return "plan for " + std::to_string(plan.wanted) + ' ' + (plant == nullptr ? "plants" : core::fullName(*plant));
}

}  // namespace

core::Result<Changes> keep(Logbook& logbook, const core::Plan& plan) {
    const std::string words = (plan.id.isSet() ? "change of the " : "new ") + calledPlan(plan, logbook.shelves());
    return actUnlessRefused(logbook, words, [&](Writer& writer) {
        const core::Shelves shelves = logbook.shelves();
        core::Refusals faults = core::faultsIn(plan, shelves);
        if (plan.id.isSet() && core::find(shelves.plans, plan.id) == nullptr)
            faults.push_back(notThere("Plan", "plan"));
        if (!faults.empty()) return faults;
        if (plan.id.isSet()) {
            writer.change(plan);
        } else {
            writer.add(plan);
        }
        return faults;
    });
}

core::Result<Changes> remove(Logbook& logbook, core::PlanId id) {
    const core::Shelves shelves = logbook.shelves();
    const core::Plan* plan = core::find(shelves.plans, id);
    if (plan == nullptr) return core::refused({notThere("Plan", "plan")});
    return actUnlessRefused(logbook, "removal of the " + calledPlan(*plan, shelves), [&](Writer& writer) {
        writer.remove(id);
        return core::Refusals{};
    });
}

}  // namespace db
