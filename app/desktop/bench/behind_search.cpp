// SPDX-License-Identifier: MIT
#include "app/desktop/bench/behind_search.h"

#include <QTimer>
#include <algorithm>
#include <unordered_set>
#include <utility>

#include "app/desktop/workspace.h"

namespace desktop {

namespace {

/// How many of a plant's batches are read: enough to tell what is usual.
constexpr std::size_t mostBatches = 500;

std::vector<core::PlantId> plantsGoingOn(const std::vector<core::BatchLine>& lines) {
    std::vector<core::PlantId> plants;
    std::unordered_set<core::PlantId> seen;
    for (const core::BatchLine& line : lines)
        if (line.tally.lastCheckedOn && !core::isClosed(line.batch, line.tally) && seen.insert(line.batch.plant).second)
            plants.push_back(line.batch.plant);
    return plants;
}

}  // namespace

BehindSearch::BehindSearch(Workspace& workspace, QObject* parent) : QObject(parent), workspace_(workspace) {
    connect(&workspace_, &Workspace::logbookReplaced, this, &BehindSearch::startAfresh);
    connect(&workspace_, &Workspace::logbookChanged, this, &BehindSearch::lookAgain);
    startAfresh();
}

std::vector<core::BehindThePast> BehindSearch::found() const {
    std::vector<core::BehindThePast> all;
    for (const auto& [plant, behind] : found_) all.insert(all.end(), behind.begin(), behind.end());
    std::ranges::sort(all, {},
                      [](const core::BehindThePast& one) { return std::pair(one.against.chanceOfSoFew, one.code); });
    return all;
}

void BehindSearch::startAfresh() {
    reading_.stop();
    sums_.stop();
    waiting_.clear();
    found_.clear();
    isLooking_ = false;
    if (workspace_.hasLogbook())
        workspace_.attemptWithout([this] {
            for (const core::PlantId plant : plantsGoingOn(workspace_.batchLines())) look(plant);
        });
    emit foundChanged();
}

void BehindSearch::lookAgain(const db::Changes& changes) {
    const auto touches = [&](const char* table) {
        return std::ranges::find(changes.tables, table) != changes.tables.end();
    };
    const auto lines = workspace_.batchLinesOf(changes.batches);
    // A batch that is gone no longer says whose it was.
    if (touches("facts") || touches("plants") || touches("sessions") || lines.size() != changes.batches.size())
        return startAfresh();
    for (const core::BatchLine& line : lines) look(line.batch.plant);
}

void BehindSearch::look(core::PlantId plant) {
    if (std::ranges::find(waiting_, plant) == waiting_.end()) waiting_.push_back(plant);
    if (std::exchange(isLooking_, true)) return;
    QTimer::singleShot(0, this, &BehindSearch::goOn);
}

void BehindSearch::goOn() {
    if (waiting_.empty() || !workspace_.hasLogbook()) {
        isLooking_ = false;
        emit foundChanged();
        return;
    }
    const core::PlantId plant = waiting_.front();
    waiting_.pop_front();
    std::vector<core::BatchId> newest;
    workspace_.attemptWithout([&] { newest = newestOf(plant); });
    reading_.ask(
        [batches = std::move(newest)](const db::Logbook& logbook, const std::stop_token& stop) {
            std::vector<core::BatchRecord> records;
            for (auto batch = batches.begin(); batch != batches.end() && !stop.stop_requested(); ++batch)
                if (auto record = logbook.batch(*batch)) records.push_back(std::move(*record));
            return records;
        },
        [this, plant](std::vector<core::BatchRecord> records) { workOut(plant, std::move(records)); },
        [this, plant] { keep(plant, {}); });
}

std::vector<core::BatchId> BehindSearch::newestOf(core::PlantId plant) const {
    std::vector<core::BatchId> batches;
    const std::vector<core::BatchLine>& lines = workspace_.batchLines();
    for (auto line = lines.rbegin(); line != lines.rend() && batches.size() < mostBatches; ++line)
        if (line->batch.plant == plant) batches.push_back(line->batch.id);
    std::ranges::reverse(batches);
    return batches;
}

void BehindSearch::workOut(core::PlantId plant, std::vector<core::BatchRecord> read) {
    auto records = std::make_shared<const std::vector<core::BatchRecord>>(std::move(read));
    auto shelves = std::make_shared<const core::Shelves>(workspace_.shelves());
    sums_.ask(
        [=, today = workspace_.today()](std::stop_token) { return core::batchesBehind(*records, *shelves, today); },
        [this, plant](const std::vector<core::BehindThePast>& behind) { keep(plant, behind); });
}

void BehindSearch::keep(core::PlantId plant, const std::vector<core::BehindThePast>& behind) {
    found_[plant] = behind;
    goOn();
    emit foundChanged();
}

}  // namespace desktop
