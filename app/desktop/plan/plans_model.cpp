// SPDX-License-Identifier: MIT
#include "app/desktop/plan/plans_model.h"

#include <algorithm>
#include <mutex>

#include "app/desktop/printing/printed_at.h"
#include "app/desktop/workspace.h"
#include "app/report/plan_sheet.h"
#include "core/comparison/spread.h"

namespace desktop {

/// What the sums need, as it was when it was read. The spread is the same for every plan; whichever sum comes first works it out.
struct PlansModel::Copies {
    Copies(core::Shelves shelvesRead, std::vector<core::BatchRecord> recordsRead,
           std::vector<core::FreeStation> freeRead, core::Date day)
        : shelves(std::move(shelvesRead)), records(std::move(recordsRead)), free(std::move(freeRead)), today(day) {}

    [[nodiscard]] core::PlanAnswer answerTo(const core::Plan& plan) const {
        std::call_once(spreadKnown_, [this] {
            spread_ = core::pooledSpreadOf(records, shelves.facts.horizonDay, shelves.facts.level);
        });
        return core::answerTo(plan, shelves, records, spread_, today);
    }

    core::Shelves shelves;
    std::vector<core::BatchRecord> records;
    std::vector<core::FreeStation> free;
    core::Date today;

  private:
    mutable std::once_flag spreadKnown_;
    mutable stats::PooledSpread spread_{};
};

namespace {

/// What to stick first comes first, as the fits have it; plans without a number to stick follow.
std::shared_ptr<const AnsweredPlans> inOrderOfSticking(std::vector<core::PlanAnswer> answers,
                                                       std::span<const core::FreeStation> free) {
    const core::WhatFits fits = core::whatFitsOf(answers, free);
    std::vector<std::size_t> order;
    for (const core::PlanFit& fit : fits.inOrder) order.push_back(fit.plan);
    for (std::size_t i = 0; i < answers.size(); ++i)
        if (std::ranges::find(order, i) == order.end()) order.push_back(i);
    auto sorted = std::make_shared<AnsweredPlans>();
    for (const std::size_t i : order) sorted->answers.push_back(std::move(answers[i]));
    sorted->fits = fits;
    for (std::size_t i = 0; i < sorted->fits.inOrder.size(); ++i) sorted->fits.inOrder[i].plan = i;
    return sorted;
}

}  // namespace

const core::PlanFit* AnsweredPlans::fitOf(std::size_t answer) const {
    const auto found = std::ranges::find(fits.inOrder, answer, &core::PlanFit::plan);
    return found == fits.inOrder.end() ? nullptr : &*found;
}

PlansModel::PlansModel(Workspace& workspace, QObject* parent) : QObject(parent), workspace_(workspace) {
    connect(&workspace_, &Workspace::logbookChanged, this, &PlansModel::forget);
    connect(&workspace_, &Workspace::logbookReplaced, this, &PlansModel::forget);
}

void PlansModel::ask(const core::Plan& plan) {
    if (!workspace_.hasLogbook()) return;
    asked_ = plan;
    work();
}

void PlansModel::work() {
    if (copies_ == nullptr) return readCopies();  // which comes back here
    if (asked_) sumOne(*asked_);
    if (isAllAsked_) sumAll();
    asked_.reset();
    isAllAsked_ = false;
}

void PlansModel::readCopies() {
    if (isReading_) return;
    isReading_ = true;
    reading_.ask([](const db::Logbook& logbook, std::stop_token) { return logbook.batchRecords(); },
                 [this](std::vector<core::BatchRecord> records) {
                     isReading_ = false;
                     const core::Shelves& shelves = workspace_.shelves();
                     copies_ = std::make_shared<const Copies>(shelves, std::move(records),
                                                              core::freeStations(shelves, workspace_.batchLines()),
                                                              workspace_.today());
                     work();
                 },
                 [this] {
                     isReading_ = isWorking_ = isAllAsked_ = false;
                     asked_.reset();
                     emit plansChanged();
                 });
}

void PlansModel::sumOne(const core::Plan& plan) {
    oneSum_.ask([from = copies_,
                 plan](std::stop_token) { return std::make_shared<const core::PlanAnswer>(from->answerTo(plan)); },
                [this](const std::shared_ptr<const core::PlanAnswer>& answer) { emit answered(*answer); });
}

void PlansModel::sumAll() {
    allSums_.ask(
        [from = copies_](std::stop_token stop) {
            std::vector<core::PlanAnswer> answers;
            for (const core::Plan& plan : from->shelves.plans) {
                if (stop.stop_requested()) break;
                answers.push_back(from->answerTo(plan));
            }
            return inOrderOfSticking(std::move(answers), from->free);
        },
        [this](const std::shared_ptr<const AnsweredPlans>& plans) {
            isWorking_ = false;
            plans_ = plans;
            emit plansChanged();
        });
}

void PlansModel::setWatched(bool isWatched) {
    isWatched_ = isWatched;
    if (isWatched_ && isStale_) readAgain();
}

void PlansModel::forget() {
    copies_.reset();
    reading_.stop();
    isReading_ = false;
    oneSum_.stop();
    isStale_ = true;
    if (isWatched_) readAgain();
}

void PlansModel::readAgain() {
    isStale_ = false;
    isWorking_ = workspace_.hasLogbook() && !workspace_.shelves().plans.empty();
    if (isWorking_) {
        isAllAsked_ = true;
        work();
    } else {
        allSums_.stop();
        isAllAsked_ = false;
        plans_ = std::make_shared<AnsweredPlans>();
    }
    emit plansChanged();
}

std::shared_ptr<const report::Sheet> PlansModel::sheet() const {
    if (plans_->answers.empty() || isWorking_) return nullptr;
    return std::make_shared<const report::Sheet>(report::planSheet(plans_->answers, plans_->fits, workspace_.today(),
                                                                   workspace_.shelves(), printedAt(workspace_)));
}

}  // namespace desktop
