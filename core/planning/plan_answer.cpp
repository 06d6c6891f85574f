// SPDX-License-Identifier: MIT
#include "core/planning/plan_answer.h"

namespace core {

PlanAnswer answerTo(const Plan& plan, const Shelves& shelves, std::span<const BatchRecord> batches,
                    const stats::PooledSpread& spread, Date today) {
    PlanAnswer answer{.plan = plan,
                      .records = pastRecordsOf(plan.plant, plan.method, shelves, batches, spread),
                      .rooting = {},
                      .howMany = refused({}),
                      .when = {}};
    answer.rooting = rootingDaysOf(answer.records, shelves, batches);
    answer.howMany = howManyToStick({.wanted = plan.wanted,
                                     .assurance = plan.assurance,
                                     .pottedLive = plan.pottedLivePercent / 100,
                                     .rootedInTime = plan.needBy ? answer.rooting.rootedInTime : 1,
                                     .traySize = usualTraySize(answer.records, shelves),
                                     .level = shelves.facts.level},
                                    answer.records);
    if (plan.needBy)
        answer.when = whenToStick({*plan.needBy, plan.hardeningDays, plan.pottingDays}, answer.rooting, answer.records,
                                  answer.howMany ? answer.howMany->stick : std::nullopt, shelves, today);
    return answer;
}

WhatFits whatFitsOf(std::span<const PlanAnswer> answers, std::span<const FreeStation> stations) {
    std::vector<PlanToFit> plans;
    std::vector<std::size_t> answerOfPlan;
    for (std::size_t i = 0; i < answers.size(); ++i) {
        const PlanAnswer& answer = answers[i];
        if (!answer.howMany || !answer.howMany->stick) continue;
        const bool hasDay = answer.when && answer.when->has_value();
        plans.push_back({.name = answer.records.plantName,
                         .method = answer.plan.method,
                         .cuttings = *answer.howMany->stick,
                         .stickBy = hasDay ? std::optional((*answer.when)->stickBy) : std::nullopt});
        answerOfPlan.push_back(i);
    }
    WhatFits fits = whatFits(plans, stations);
    for (PlanFit& fit : fits.inOrder) fit.plan = answerOfPlan[fit.plan];
    return fits;
}

}  // namespace core
