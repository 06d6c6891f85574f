// SPDX-License-Identifier: MIT
#include "db/exchange/folder_trials.h"

#include <algorithm>

#include "core/planning/plan_rules.h"
#include "core/shelf_rules.h"
#include "core/trial/trial_rules.h"
#include "core/units/entered_text.h"
#include "db/actions/session_actions.h"

namespace db {

namespace {

/// The word in the cell, or what is usual where it is empty.
template <class Word>
Word wordIn(TableRow& row, std::string_view column, std::optional<Word> (*from)(std::string_view), Word usual,
            const std::string& allowed) {
    const std::string word = row.text(column);
    if (word.empty()) return usual;
    if (const auto known = from(word)) return *known;
    row.fault(column, core::quotable(word) + " is not known here; " + allowed + " is allowed.");
    return usual;
}

/// For wordIn(): what is usual is that there is none.
std::optional<std::optional<core::Factor>> factorOrNone(std::string_view word) {
    std::optional<std::optional<core::Factor>> found;
    if (const auto factor = core::factorFrom(word)) found.emplace(factor);
    return found;
}

core::Trial trialIn(TableRow& row) {
    constexpr std::int64_t largestSeed = 4'294'967'295;
    core::Trial trial{.id = {newId()},
                      .name = row.text("trial"),
                      .horizonDay = {},
                      .allocationSeed = {},
                      .note = row.text("note"),
                      .question = row.text("question")};
    if (const auto day = row.count("horizon_day")) trial.horizonDay = static_cast<int>(*day);
    if (const auto seed = row.count("allocation_seed", largestSeed))
        trial.allocationSeed = static_cast<std::uint32_t>(*seed);
    trial.factor =
        wordIn(row, "factor", factorOrNone, std::optional<core::Factor>(), "method, treatment, medium or cutting");
    trial.blockedBy = wordIn(row, "blocked_by", core::blockedByFrom, core::BlockedBy::Nothing,
                             "nothing, plant, stock plant, session or station side");
    trial.measure =
        wordIn(row, "measure", core::trialMeasureFrom, core::TrialMeasure::MoreRooted, "more rooted or as good as");
    trial.margin = row.figure("margin");
    if (const auto count = row.count("per_arm")) trial.perArm = static_cast<int>(*count);
    trial.isBlinded = row.truth("is_blinded");
    trial.isCrossedOver = row.truth("is_crossed_over");
    trial.setOn = row.date("set_on");
    return trial;
}

/// The arm that its factor calls so; of no factor and no such thing there is none.
core::TrialArm armNamed(const std::string& name, std::optional<core::Factor> factor, const FolderShelves& shelves) {
    core::TrialArm arm;
    const auto set = [&name](auto& id, const auto& list) {
        if (const auto* thing = list.find(name)) id = thing->id;
    };
    if (factor == core::Factor::Method) set(arm.method, shelves.methods);
    if (factor == core::Factor::Treatment) set(arm.treatment, shelves.treatments);
    if (factor == core::Factor::Medium) set(arm.medium, shelves.media);
    if (factor == core::Factor::CuttingKind) set(arm.cuttingKind, shelves.cuttingKinds);
    return arm;
}

class TrialPartsReading {
  public:
    TrialPartsReading(FolderShelves& shelves, const FolderBatches& batches) : shelves_(shelves), batches_(batches) {}

    void takeArm(TableRow& row) {
        core::Trial* trial = trialOf(row);
        if (trial == nullptr) return;
        const std::string name = row.text("arm");
        const core::TrialArm arm = armNamed(name, trial->factor, shelves_);
        if (arm == core::TrialArm{})
            return row.fault("arm", core::quotable(name) + " is no " +
                                        (trial->factor ? std::string(core::wordFor(*trial->factor)) : "arm") +
                                        " of this folder, or the trial has no factor.");
        trial->arms.push_back(arm);
    }

    void takeDealt(TableRow& row) {
        core::Trial* trial = trialOf(row);
        if (trial == nullptr) return;
        core::TrialBatch dealt{.number = row.countOr("number", 0, 1'000'000),
                               .session = row.countOr("session_number", 0, 1000),
                               .station = {},
                               .block = row.text("block"),
                               .plant = {},
                               .stockPlant = {},
                               .arm = 0,
                               .stuck = row.countOr("stuck", 0),
                               .positions = core::tidyPositions(row.text("positions")),
                               .batch = {}};
        readPlace(row, dealt);
        readArm(row, *trial, dealt);
        readBatch(row, dealt);
        if (row.isSound()) trial->batches.push_back(std::move(dealt));
    }

    void takeChange(TableRow& row) {
        core::Trial* trial = trialOf(row);
        const auto day = row.date("changed_on");
        if (trial == nullptr || !day) return;
        trial->changes.push_back({.changedOn = *day,
                                  .what = row.text("what"),
                                  .was = row.text("was"),
                                  .became = row.text("became"),
                                  .reason = row.text("reason")});
    }

  private:
    /// Nothing of a trial that is faulty itself: what hangs on it isn't blamed for that.
    core::Trial* trialOf(TableRow& row) {
        if (!row.isWhole()) return nullptr;
        const std::string name = row.text("trial");
        core::Trial* trial = shelves_.trials.find(name);
        const bool isSound = shelves_.rowOfTrial.contains(name);
        if (trial == nullptr || (!isSound && !shelves_.trials.hasTable))
            row.fault("trial", "No trial " + core::quotable(name) + " is in trials.csv.");
        return isSound ? trial : nullptr;
    }

    void readPlace(TableRow& row, core::TrialBatch& dealt) const {
        const std::string station = row.text("station"), species = row.text("species");
        if (const core::Station* known = std::as_const(shelves_.stations).find(station))
            dealt.station = known->id;
        else
            row.fault("station", "No station " + core::quotable(station) + " is in stations.csv.");
        if (species.empty()) return;
        const core::Plant* plant = std::as_const(shelves_.plants).find(plantKey(species, row.text("cultivar")));
        if (plant == nullptr) return row.fault("species", "No plant of this species and cultivar is in plants.csv.");
        dealt.plant = plant->id;
        const std::string label = row.text("stock_plant");
        if (label.empty()) return;
        const core::StockPlant* mother = std::as_const(shelves_.stockPlants).find(stockPlantKey(plant->id, label));
        if (mother == nullptr)
            return row.fault("stock_plant",
                             "No stock plant " + core::quotable(label) + " of it is in stock_plants.csv.");
        dealt.stockPlant = mother->id;
    }

    void readArm(TableRow& row, const core::Trial& trial, core::TrialBatch& dealt) const {
        const std::string name = row.text("arm");
        const auto arm = std::ranges::find(trial.arms, armNamed(name, trial.factor, shelves_));
        if (arm == trial.arms.end())
            return row.fault("arm", "No arm " + core::quotable(name) + " of this trial is in trial_arms.csv.");
        dealt.arm = static_cast<int>(arm - trial.arms.begin());
    }

    void readBatch(TableRow& row, core::TrialBatch& dealt) const {
        const std::string code = row.text("batch");
        if (code.empty()) return;
        const auto known = batches_.codes.find(code);
        if (known == batches_.codes.end()) {
            if (batches_.hasBatchTable) row.fault("batch", "No batch " + core::quotable(code) + " is in batches.csv.");
        } else if (known->second.isSound) {
            dealt.batch = batches_.batches[known->second.place].batch.id;
        }
    }

    FolderShelves& shelves_;
    const FolderBatches& batches_;
};

/// What only a trial as a whole can be blamed for: too few arms, numbers that come twice.
void judgeTrials(const FolderShelves& shelves, FaultList& faults) {
    for (const core::Trial& trial : shelves.shelves.trials) {
        const auto row = shelves.rowOfTrial.find(trial.name);
        if (row == shelves.rowOfTrial.end()) continue;  // made from a name in batches.csv
        for (const core::Refusal& refusal : core::faultsIn(trial, shelves.shelves))
            faults.add({.file = "trials.csv",
                        .row = row->second,
                        .column = columnOf(exchangeTable("trials"), refusal.field),
                        .reason = refusal.sentence});
    }
}

}  // namespace

void readTrials(const std::filesystem::path& folder, FolderShelves& into, FaultList& faults,
                const std::stop_token& stop) {
    into.trials.hasTable = readTable(folder, "trials", faults, stop, [&](TableRow& row) {
                               if (!row.isWhole()) return;
                               core::Trial trial = trialIn(row);
                               core::Trial alone = trial;
                               alone.factor.reset();  // its arms come later
                               row.refuse(core::faultsIn(alone, into.shelves));
                               const std::string key = trial.name;
                               if (into.trials.find(key) != nullptr) return;
                               if (row.isSound()) into.rowOfTrial.emplace(key, row.number());
                               into.trials.add(key, std::move(trial));
                           }) != TableFound::Missing;
}

void readTrialParts(const std::filesystem::path& folder, FolderShelves& shelves, const FolderBatches& batches,
                    FaultList& faults, const std::stop_token& stop) {
    TrialPartsReading reading(shelves, batches);
    const std::size_t before = faults.faults().size();
    (void)readTable(folder, "trial_arms", faults, stop, [&](TableRow& row) { reading.takeArm(row); });
    (void)readTable(folder, "trial_batches", faults, stop, [&](TableRow& row) { reading.takeDealt(row); });
    (void)readTable(folder, "trial_changes", faults, stop, [&](TableRow& row) { reading.takeChange(row); });
    if (faults.faults().size() == before) judgeTrials(shelves, faults);
}

void readPlans(const std::filesystem::path& folder, FolderShelves& shelves, FaultList& faults,
               const std::stop_token& stop) {
    (void)readTable(folder, "plans", faults, stop, [&](TableRow& row) {
        if (!row.isWhole()) return;
        core::Plan plan{.id = {newId()},
                        .plant = {},
                        .method = {},
                        .wanted = row.countOr("wanted", 0),
                        .assurance = row.figure("assurance").value_or(0),
                        .needBy = row.date("need_by"),
                        .pottedLivePercent = row.figure("potted_live_percent").value_or(0),
                        .hardeningDays = row.countOr("hardening_days", 0),
                        .pottingDays = row.countOr("potting_days", 0),
                        .note = row.text("note")};
        const std::string method = row.text("method");
        const core::Plant* plant = shelves.plants.find(plantKey(row.text("species"), row.text("cultivar")));
        const core::Method* known = shelves.methods.find(method);
        if (plant == nullptr) row.fault("species", "No plant of this species and cultivar is in plants.csv.");
        if (known == nullptr && !method.empty())
            row.fault("method", "No method " + core::quotable(method) + " is in methods.csv.");
        if (plant == nullptr || (known == nullptr && !method.empty())) return;
        plan.plant = plant->id;
        if (known != nullptr) plan.method = known->id;
        row.refuse(core::faultsIn(plan, shelves.shelves));
        shelves.shelves.plans.push_back(std::move(plan));
    });
}

}  // namespace db
