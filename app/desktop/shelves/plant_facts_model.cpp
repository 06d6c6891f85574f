// SPDX-License-Identifier: MIT
#include "app/desktop/shelves/plant_facts_model.h"

#include <mutex>

#include "app/desktop/workspace.h"
#include "core/comparison/spread.h"

namespace desktop {

/// As the logbook was when it was read. The spread is the same for every plant; whichever sum comes first works it out.
struct PlantFactsModel::Copies {
    Copies(core::Shelves shelvesRead, std::vector<core::BatchRecord> recordsRead)
        : shelves_(std::move(shelvesRead)), records_(std::move(recordsRead)) {}

    [[nodiscard]] core::PlantFacts factsOf(core::PlantId plant) const {
        std::call_once(spreadKnown_, [this] {
            spread_ = core::pooledSpreadOf(records_, shelves_.facts.horizonDay, shelves_.facts.level);
        });
        return core::plantFactsOf(plant, shelves_, records_, spread_);
    }

  private:
    core::Shelves shelves_;
    std::vector<core::BatchRecord> records_;
    mutable std::once_flag spreadKnown_;
    mutable stats::PooledSpread spread_{};
};

PlantFactsModel::PlantFactsModel(Workspace& workspace, QObject* parent) : QObject(parent), workspace_(workspace) {
    connect(&workspace_, &Workspace::logbookChanged, this, &PlantFactsModel::forget);
    connect(&workspace_, &Workspace::logbookReplaced, this, &PlantFactsModel::forget);
}

void PlantFactsModel::forget() {
    copies_.reset();
    reading_.stop();
    sums_.stop();
    isReading_ = false;
    isStale_ = true;
    if (isWatched_) work();
}

void PlantFactsModel::show(core::PlantId plant) {
    if (plant == plant_) return;
    plant_ = plant;
    facts_.reset();
    isStale_ = true;
    emit told();
    if (isWatched_) work();
}

void PlantFactsModel::setWatched(bool isWatched) {
    isWatched_ = isWatched;
    if (isWatched_ && isStale_) work();
}

void PlantFactsModel::work() {
    isStale_ = false;
    sums_.stop();
    if (!workspace_.hasLogbook() || core::find(workspace_.shelves().plants, plant_) == nullptr) {
        facts_.reset();
        emit told();
    } else if (copies_ == nullptr) {
        readCopies();
    } else {
        sum();
    }
}

void PlantFactsModel::readCopies() {
    if (isReading_) return;
    isReading_ = true;
    reading_.ask([](const db::Logbook& logbook, std::stop_token) { return logbook.batchRecords(); },
                 [this](std::vector<core::BatchRecord> records) {
                     isReading_ = false;
                     copies_ = std::make_shared<const Copies>(workspace_.shelves(), std::move(records));
                     work();
                 },
                 [this] { isReading_ = false; });
}

void PlantFactsModel::sum() {
    sums_.ask([from = copies_, plant = plant_](
                  std::stop_token) { return std::make_shared<const core::PlantFacts>(from->factsOf(plant)); },
              [this](const std::shared_ptr<const core::PlantFacts>& facts) {
                  facts_ = facts;
                  emit told();
              });
}

}  // namespace desktop
