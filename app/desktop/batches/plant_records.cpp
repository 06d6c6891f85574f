// SPDX-License-Identifier: MIT
#include "app/desktop/batches/plant_records.h"

#include <QElapsedTimer>
#include <utility>

#include "app/desktop/workspace.h"

namespace desktop {

namespace {

constexpr int sliceMilliseconds = 20;

}  // namespace

PlantRecords::PlantRecords(Workspace& workspace, QObject* parent) : QObject(parent), workspace_(workspace) {
    next_.setSingleShot(true);
    connect(&next_, &QTimer::timeout, this, &PlantRecords::readOn);
}

void PlantRecords::ask(core::PlantId plant, Tell tell) {
    stop();
    tell_ = std::move(tell);
    read_ = std::make_shared<std::vector<core::BatchRecord>>();
    const std::vector<core::BatchLine>& lines = workspace_.batchLines();
    for (auto line = lines.rbegin(); line != lines.rend(); ++line)
        if (line->batch.plant == plant) waiting_.push_back(line->batch.id);
    readOn();
}

void PlantRecords::stop() {
    next_.stop();
    waiting_.clear();
    read_.reset();
    tell_ = nullptr;
}

void PlantRecords::readOn() {
    const bool isRead = workspace_.hasLogbook() && workspace_.attempt([this](db::Logbook& logbook) {
        QElapsedTimer sinceStart;
        sinceStart.start();
        while (!waiting_.empty() && sinceStart.elapsed() < sliceMilliseconds) {
            if (auto record = logbook.batch(waiting_.back())) read_->push_back(std::move(*record));
            waiting_.pop_back();
        }
    });
    if (!isRead) return stop();
    if (!waiting_.empty()) return next_.start(0);
    const Tell tell = std::exchange(tell_, nullptr);
    tell(std::exchange(read_, nullptr));
}

}  // namespace desktop
