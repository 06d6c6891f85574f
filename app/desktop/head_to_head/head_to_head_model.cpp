// SPDX-License-Identifier: MIT
#include "app/desktop/head_to_head/head_to_head_model.h"

#include <algorithm>
#include <unordered_set>
#include <utility>

#include "app/desktop/printing/printed_at.h"
#include "app/desktop/workspace.h"
#include "app/plot/station_charts.h"
#include "app/report/comparison_sheet.h"

namespace desktop {

HeadToHeadModel::HeadToHeadModel(Workspace& workspace, QObject* parent) : QObject(parent), workspace_(workspace) {
    connect(&workspace_, &Workspace::logbookChanged, this, &HeadToHeadModel::forget);
    connect(&workspace_, &Workspace::logbookReplaced, this, &HeadToHeadModel::startAfresh);
}

void HeadToHeadModel::chooseFactor(core::Factor factor) {
    question_.factor = factor;
    ask();
}

void HeadToHeadModel::choosePlant(core::PlantId plant) {
    question_.plant = plant;
    ask();
}

void HeadToHeadModel::chooseTrial(core::TrialId trial) {
    question_.trial = trial.isSet() ? std::optional(trial) : std::nullopt;
    ask();
}

void HeadToHeadModel::setHorizon(std::optional<int> day) {
    if (question_.horizonDay == day) return;
    question_.horizonDay = day;
    ask();
}

void HeadToHeadModel::setLevel(std::optional<double> level) {
    question_.level = level;
    ask();
}

void HeadToHeadModel::setInterval(std::optional<core::RateInterval> interval) {
    if (question_.interval == interval) return;
    question_.interval = interval;
    ask();
}

void HeadToHeadModel::setMargin(std::optional<double> margin) {
    if (question_.margin == margin) return;
    question_.margin = margin;
    ask();
}

void HeadToHeadModel::setWatched(bool isWatched) {
    isWatched_ = isWatched;
    if (isWatched_ && isStale_) ask();
}

void HeadToHeadModel::stop() {
    if (!view_.isWorking) return;
    reading_.stop();
    sums_.stop();
    view_.isWorking = false;
    view_.isReading = false;
    view_.isStopped = true;
    emit viewChanged();
}

void HeadToHeadModel::workItOut() {
    ask();
}

void HeadToHeadModel::startAfresh() {
    // What stands there is of another logbook, or of one that somebody else has changed.
    view_.comparison.reset();
    view_.fault.clear();
    forget();
}

void HeadToHeadModel::forget() {
    reading_.stop();
    sums_.stop();
    copies_.reset();
    isStale_ = true;
    if (isWatched_) ask();
}

void HeadToHeadModel::readChoices() {
    std::unordered_set<core::PlantId> plants;
    std::unordered_set<core::TrialId> trials;
    for (const core::BatchRecord& record : copies_->read.records) {
        plants.insert(record.batch.plant);
        trials.insert(record.batch.trial);
    }
    view_.plants.clear();
    for (const core::Plant& plant : copies_->shelves.plants)
        if (plants.contains(plant.id))
            view_.plants.push_back({plant.id, QString::fromStdString(core::fullName(plant))});
    view_.trials.clear();
    for (const core::Trial& trial : copies_->shelves.trials)
        if (trials.contains(trial.id)) view_.trials.push_back({trial.id, QString::fromStdString(trial.name)});
    // What was asked for may be gone by an undo or with another logbook.
    if (!plants.contains(question_.plant)) question_.plant = {};
    if (question_.trial && !trials.contains(*question_.trial)) question_.trial.reset();
}

void HeadToHeadModel::ask() {
    isStale_ = false;
    sums_.stop();
    if (!workspace_.hasLogbook()) {
        reading_.stop();
        view_ = {};
        emit viewChanged();
        return;
    }
    view_.isWorking = true;
    view_.isStopped = false;
    if (copies_ == nullptr)
        readRecords();
    else
        workOut();
    emit viewChanged();
}

void HeadToHeadModel::readRecords() {
    view_.isReading = true;
    auto shelves = std::make_shared<const core::Shelves>(workspace_.shelves());
    reading_.ask(
        [shelves](const db::Logbook& logbook, const std::stop_token&) {
            return WhatIsRead{logbook.batchRecords(), plot::conditionsOnRecord(logbook, *shelves)};
        },
        [this](WhatIsRead read) { takeRecords(std::move(read)); }, [this] { fail(); });
}

void HeadToHeadModel::takeRecords(WhatIsRead read) {
    view_.isReading = false;
    copies_ = std::make_shared<const Copies>(workspace_.shelves(), std::move(read));
    readChoices();
    workOut();
    emit viewChanged();
}

void HeadToHeadModel::fail() {
    view_.isWorking = false;
    view_.isReading = false;
    view_.comparison.reset();
    view_.fault = tr("The records could not be read.");
    emit viewChanged();
}

void HeadToHeadModel::workOut() {
    sums_.ask(
        [copies = copies_, question = question_](std::stop_token stop) {
            return core::compare(question, copies->shelves, copies->read.records, stop, copies->read.conditions);
        },
        [this](const core::Result<core::Comparison>& answer) { tell(answer); });
}

void HeadToHeadModel::tell(const core::Result<core::Comparison>& answer) {
    view_.isWorking = false;
    view_.fault.clear();
    view_.comparison.reset();
    view_.horizon.clear();
    if (answer) {
        view_.comparison = std::make_shared<const core::Comparison>(*answer);
        view_.horizon =
            tr("Decided at day %1: %2.").arg(answer->horizonDay).arg(QString::fromStdString(answer->horizonReason));
    } else {
        QStringList sentences;
        for (const core::Refusal& refusal : answer.error()) sentences.append(QString::fromStdString(refusal.sentence));
        view_.fault = sentences.join(QLatin1Char(' '));
    }
    emit viewChanged();
}

std::shared_ptr<const report::Sheet> HeadToHeadModel::sheet() const {
    if (view_.comparison == nullptr || view_.isWorking || view_.isStopped || view_.comparison->arms.size() < 2)
        return nullptr;
    return std::make_shared<const report::Sheet>(
        report::comparisonSheet(*view_.comparison, workspace_.shelves(), printedAt(workspace_)));
}

}  // namespace desktop
