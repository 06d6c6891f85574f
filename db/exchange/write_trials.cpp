// SPDX-License-Identifier: MIT
#include "db/exchange/write_trials.h"

#include <algorithm>
#include <tuple>

#include "core/trial/trial_rules.h"

namespace db {

namespace {

std::string dayOrNot(const std::optional<core::Date>& day) {
    return day ? core::isoText(*day) : std::string();
}

std::string armOf(const core::Trial& trial, const core::TrialArm& arm, const core::Shelves& shelves) {
    return core::nameOf(arm, trial.factor.value_or(core::Factor::Method), shelves);
}

void writeTrialRow(const core::Trial& trial, CsvWriter& csv) {
    csv.text(trial.name).number(trial.horizonDay);
    csv.text(trial.allocationSeed ? std::to_string(*trial.allocationSeed) : std::string()).text(trial.note);
    csv.text(trial.question).text(trial.factor ? core::wordFor(*trial.factor) : std::string_view());
    csv.text(core::wordFor(trial.blockedBy)).text(core::wordFor(trial.measure));
    if (trial.margin)
        csv.figure(*trial.margin);
    else
        csv.text("");
    csv.number(trial.perArm).truth(trial.isBlinded).truth(trial.isCrossedOver).text(dayOrNot(trial.setOn)).endRow();
}

void writeDealt(const core::Records& records, const TableFiles& files) {
    const ById plant(records.shelves.plants);
    const ById stockPlant(records.shelves.stockPlants);
    const ById station(records.shelves.stations);
    std::unordered_map<std::int64_t, std::string> codes;
    for (const core::BatchRecord& record : records.batches) codes.emplace(record.batch.id.value, record.batch.code);
    files.table("trial_batches", [&](CsvWriter& csv) {
        for (const core::Trial& trial : records.shelves.trials)
            for (const core::TrialBatch& dealt : trial.batches) {
                csv.text(trial.name).number(dealt.number).number(dealt.session).text(station(dealt.station).name);
                csv.text(dealt.block).text(plant(dealt.plant).botanicalName).text(plant(dealt.plant).cultivar);
                csv.text(stockPlant(dealt.stockPlant).label);
                csv.text(armOf(trial, trial.arms.at(static_cast<std::size_t>(dealt.arm)), records.shelves));
                csv.number(dealt.stuck).text(dealt.positions);
                const auto code = codes.find(dealt.batch.value);
                csv.text(code == codes.end() ? std::string() : code->second).endRow();
            }
    });
}

/// In an order that comes from what is in them, not from ids, so that a copy of the logbook gives the same file.
void writePlans(const core::Shelves& shelves, const TableFiles& files) {
    const ById plant(shelves.plants);
    const ById method(shelves.methods);
    std::vector<const core::Plan*> plans;
    for (const core::Plan& plan : shelves.plans) plans.push_back(&plan);
    std::ranges::stable_sort(plans, {}, [&](const core::Plan* plan) {
        return std::tuple(!plan->needBy, plan->needBy.value_or(core::Date{}), plant(plan->plant).botanicalName,
                          plant(plan->plant).cultivar, method(plan->method).name, plan->wanted, plan->assurance,
                          plan->pottedLivePercent, plan->hardeningDays, plan->pottingDays, plan->note);
    });
    files.table("plans", [&](CsvWriter& csv) {
        for (const core::Plan* plan : plans) {
            csv.text(plant(plan->plant).botanicalName).text(plant(plan->plant).cultivar);
            csv.text(method(plan->method).name).number(plan->wanted).figure(plan->assurance);
            csv.text(dayOrNot(plan->needBy)).figure(plan->pottedLivePercent).number(plan->hardeningDays);
            csv.number(plan->pottingDays).text(plan->note).endRow();
        }
    });
}

}  // namespace

void writeTrials(const core::Records& records, const TableFiles& files) {
    const core::Shelves& shelves = records.shelves;
    files.table("trials", [&](CsvWriter& csv) {
        for (const core::Trial& trial : shelves.trials) writeTrialRow(trial, csv);
    });
    files.table("trial_arms", [&](CsvWriter& csv) {
        for (const core::Trial& trial : shelves.trials)
            for (const core::TrialArm& arm : trial.arms) csv.text(trial.name).text(armOf(trial, arm, shelves)).endRow();
    });
    writeDealt(records, files);
    files.table("trial_changes", [&](CsvWriter& csv) {
        for (const core::Trial& trial : shelves.trials)
            for (const core::TrialChange& change : trial.changes)
                csv.text(trial.name)
                    .text(core::isoText(change.changedOn))
                    .text(change.what)
                    .text(change.was)
                    .text(change.became)
                    .text(change.reason)
                    .endRow();
    });
    writePlans(shelves, files);
}

}  // namespace db
