// SPDX-License-Identifier: MIT
#include "tests/support/trials_by_chance.h"

#include <algorithm>
#include <stdexcept>

#include "db/actions/plan_actions.h"
#include "db/actions/shelf_actions.h"
#include "db/actions/trial_actions.h"
#include "tests/support/chance_values.h"

namespace support {

namespace {

core::TrialArm someArm(const core::Shelves& shelves, core::Factor factor, Chance& chance) {
    core::TrialArm arm;
    if (factor == core::Factor::Method) arm.method = some(shelves.methods, chance).id;
    if (factor == core::Factor::Treatment) arm.treatment = some(shelves.treatments, chance).id;
    if (factor == core::Factor::Medium) arm.medium = some(shelves.media, chance).id;
    if (factor == core::Factor::CuttingKind) arm.cuttingKind = some(shelves.cuttingKinds, chance).id;
    return arm;
}

/// Now and then two arms are one, the horizon is no day or there is nothing to deal.
core::Trial someDesign(const core::Shelves& shelves, Chance& chance) {
    core::Trial trial;
    trial.name = someName(chance);
    trial.question = "Which roots better?";
    trial.factor = static_cast<core::Factor>(pick(chance, 4));
    trial.blockedBy = static_cast<core::BlockedBy>(pick(chance, 5));
    trial.horizonDay = 7 * pick(chance, 7);
    trial.margin = 0.1 * (1 + pick(chance, 9));
    trial.perArm = pick(chance, 7);
    trial.isBlinded = pick(chance, 2) == 0;
    trial.isCrossedOver = trial.factor == core::Factor::Method && pick(chance, 2) == 0;
    for (int arms = 2 + pick(chance, 4) / 3; arms > 0; --arms)
        trial.arms.push_back(someArm(shelves, *trial.factor, chance));
    return trial;
}

core::TrialLayout someLayout(const db::Logbook& logbook, const core::Trial& trial, Chance& chance) {
    const core::Shelves shelves = logbook.shelves();
    core::TrialLayout layout;
    for (const core::Station& station : shelves.stations) layout.stations.push_back(db::roomAt(logbook, station));
    layout.sessions = 2 + pick(chance, 2);
    const bool isByStockPlant = trial.blockedBy == core::BlockedBy::StockPlant;
    for (int blocks = isByStockPlant || trial.blockedBy == core::BlockedBy::Plant ? 2 : 0; blocks > 0; --blocks) {
        const core::StockPlant mother = some(shelves.stockPlants, chance);
        layout.blocks.push_back({.name = std::to_string(blocks) + ". " + mother.label,
                                 .plant = mother.plant,
                                 .stockPlant = isByStockPlant ? mother.id : core::StockPlantId{}});
    }
    return layout;
}

Done changesOf(core::Result<db::TrialWritten> done) {
    if (!done) return core::refused(std::move(done.error()));
    return done->changes;
}

/// A trial of which something is still to be stuck, if there is one.
core::Trial dealtTrial(const core::Shelves& shelves, Chance& chance) {
    std::vector<core::Trial> dealt;
    for (const core::Trial& trial : shelves.trials)
        if (std::ranges::any_of(trial.batches, [](const core::TrialBatch& one) { return !one.batch.isSet(); }))
            dealt.push_back(trial);
    return some(dealt, chance);
}

int sessionToStick(const core::Trial& trial) {
    for (const core::TrialBatch& dealt : trial.batches)
        if (!dealt.batch.isSet()) return dealt.session;
    return 1;
}

Done doChangeTrial(db::Logbook& logbook, Chance& chance, core::Date today) {
    core::Trial trial = some(logbook.shelves().trials, chance);
    trial.horizonDay = 1 + pick(chance, 60);
    trial.measure = static_cast<core::TrialMeasure>(pick(chance, 2));
    trial.margin = 0.2;
    if (pick(chance, 4) == 0) trial.perArm = 1 + pick(chance, 9);
    return db::changeTrial(logbook, trial, pick(chance, 3) == 0 ? "" : "the first roots came late", today);
}

Done doAllocateAgain(db::Logbook& logbook, Chance& chance, core::Date today) {
    const core::Shelves shelves = logbook.shelves();
    core::Trial trial = someDesign(shelves, chance);
    trial.id = some(shelves.trials, chance).id;
    const core::TrialLayout layout = someLayout(logbook, trial, chance);
    return changesOf(db::allocateAgain(logbook, trial, layout, today));
}

Done doStickTrialSession(db::Logbook& logbook, Chance& chance, core::Date today) {
    const core::Shelves shelves = logbook.shelves();
    const core::Trial trial = dealtTrial(shelves, chance);
    db::TrialSessionDraft draft;
    draft.trial = trial.id;
    draft.session.date = someDay(chance, today);
    draft.batches = core::batchesToStick(trial, sessionToStick(trial), shelves);
    for (core::PlannedBatch& planned : draft.batches) {
        if (!planned.batch.plant.isSet()) planned.batch.plant = some(shelves.plants, chance).id;
        if (pick(chance, 20) == 0) ++planned.batch.stuck;
    }
    auto done = db::stickTrialSession(logbook, draft, today);
    if (!done) return core::refused(std::move(done.error()));
    return done->changes;
}

Done doKeepPlan(db::Logbook& logbook, Chance& chance) {
    const core::Shelves shelves = logbook.shelves();
    core::Plan wish = some(shelves.plans, chance, true);
    wish.plant = some(shelves.plants, chance).id;
    wish.method = pick(chance, 2) == 0 ? core::MethodId{} : some(shelves.methods, chance).id;
    wish.wanted = 10 * pick(chance, 9);
    wish.assurance = 0.1 * (1 + pick(chance, 10));  // sometimes all
    if (pick(chance, 2) == 0) wish.needBy = core::Date{std::chrono::year(2027) / 4 / 1};
    wish.pottedLivePercent = 10.0 * (1 + pick(chance, 10));
    wish.hardeningDays = pick(chance, 20);
    return db::keep(logbook, wish);
}

}  // namespace

Done performTrial(db::Logbook& logbook, Action action, Chance& chance, core::Date today) {
    const core::Shelves shelves = logbook.shelves();
    const core::Trial design = someDesign(shelves, chance);
    switch (action) {
        case Action::PlanTrial:
            return changesOf(db::planTrial(logbook, design, someLayout(logbook, design, chance), today));
        case Action::ChangeTrial:
            return doChangeTrial(logbook, chance, today);
        case Action::AllocateAgain:
            return doAllocateAgain(logbook, chance, today);
        case Action::PlaceAgain: {
            const core::Trial trial = dealtTrial(shelves, chance);
            return changesOf(db::placeAgain(logbook, trial.id, sessionToStick(trial)));
        }
        case Action::StickTrialSession:
            return doStickTrialSession(logbook, chance, today);
        case Action::KeepPlan:
            return doKeepPlan(logbook, chance);
        case Action::RemovePlan:
            return db::remove(logbook, some(shelves.plans, chance).id);
        default:
            throw std::logic_error("an action without a generator");
    }
}

}  // namespace support
