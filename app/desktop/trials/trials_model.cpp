// SPDX-License-Identifier: MIT
#include "app/desktop/trials/trials_model.h"

#include <algorithm>

#include "app/desktop/names/text_labels.h"
#include "app/desktop/printing/printed_at.h"
#include "app/desktop/trials/trial_records.h"
#include "app/report/trial_map.h"
#include "app/report/trial_report.h"
#include "db/actions/shelf_actions.h"

namespace desktop {

namespace {

int placeOfStage(core::TrialStage stage) {
    switch (stage) {
        case core::TrialStage::Sticking:
        case core::TrialStage::Watched:
            return 0;
        case core::TrialStage::Planned:
            return 1;
        case core::TrialStage::Decided:
            return 2;
        case core::TrialStage::Named:
            break;
    }
    return 3;
}

}  // namespace

TrialsModel::TrialsModel(Workspace& workspace, QObject* parent) : QObject(parent), workspace_(workspace) {
    connect(&workspace_, &Workspace::logbookChanged, this, &TrialsModel::forget);
    connect(&workspace_, &Workspace::logbookReplaced, this, &TrialsModel::forget);
}

void TrialsModel::choose(core::TrialId trial) {
    if (chosen_ == trial) return;
    chosen_ = trial;
    askForResult();
}

const TrialRow* TrialsModel::chosen() const {
    const auto found = std::ranges::find(rows_, chosen_, [](const TrialRow& row) { return row.trial.id; });
    return found == rows_.end() ? nullptr : &*found;
}

void TrialsModel::setWatched(bool isWatched) {
    isWatched_ = isWatched;
    if (isWatched_ && isStale_) readAgain();
}

Outcome TrialsModel::remove(core::TrialId trial) {
    return workspace_.run([trial](db::Logbook& logbook) { return db::remove(logbook, trial); });
}

void TrialsModel::forget() {
    records_.reset();
    isStale_ = true;
    if (isWatched_) readAgain();
}

void TrialsModel::readAgain() {
    isStale_ = false;
    rows_.clear();
    if (workspace_.hasLogbook())
        for (const core::Trial& trial : workspace_.shelves().trials)
            rows_.push_back(
                {trial, core::progressOf(trial, workspace_.shelves(), workspace_.batchLines(), workspace_.today())});
    std::ranges::stable_sort(rows_, {}, [](const TrialRow& row) { return placeOfStage(row.progress.stage); });
    if (chosen() == nullptr) chosen_ = rows_.empty() ? core::TrialId{} : rows_.front().trial.id;
    emit rowsChanged();
    askForResult();
}

void TrialsModel::askForResult() {
    reading_.stop();
    sums_.stop();
    isReading_ = false;
    result_.reset();
    fault_.clear();
    const TrialRow* row = chosen();
    if (row != nullptr && row->progress.stage == core::TrialStage::Decided) workOut(row->trial);
    emit chosenChanged();
}

void TrialsModel::workOut(const core::Trial& trial) {
    if (records_ == nullptr) {
        isReading_ = true;
        return reading_.ask([](const db::Logbook& logbook, std::stop_token) { return TrialRecords::read(logbook); },
                            [this, trial](std::shared_ptr<const TrialRecords> records) {
                                isReading_ = false;
                                records_ = std::move(records);
                                workOut(trial);
                            },
                            [this] { isReading_ = false; });
    }
    sums_.ask(
        [records = records_, trial](std::stop_token stop) {
            return core::trialResult(trial, records->shelves(), records->batches(), stop);
        },
        [this](const core::Result<core::Comparison>& answer) { tell(answer); });
}

void TrialsModel::tell(const core::Result<core::Comparison>& answer) {
    if (answer)
        result_ = std::make_shared<const core::Comparison>(*answer);
    else
        fault_ = sentencesOf(answer.error());
    emit chosenChanged();
}

std::shared_ptr<const report::Sheet> TrialsModel::sheet() const {
    const TrialRow* row = chosen();
    if (row == nullptr || isWorking()) return nullptr;
    return std::make_shared<const report::Sheet>(
        report::trialReport(row->trial, row->progress, result_.get(), workspace_.shelves(), printedAt(workspace_)));
}

std::shared_ptr<const report::Sheet> TrialsModel::mapSheet() const {
    const TrialRow* row = chosen();
    if (row == nullptr || row->trial.batches.empty()) return nullptr;
    return std::make_shared<const report::Sheet>(
        report::trialMapSheet(row->trial, row->progress, workspace_.shelves(), printedAt(workspace_)));
}

}  // namespace desktop
