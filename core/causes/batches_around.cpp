// SPDX-License-Identifier: MIT
#include "core/causes/batches_around.h"

#include <algorithm>
#include <cstdlib>
#include <map>
#include <tuple>
#include <unordered_map>

namespace core {

namespace {

bool isOwnKind(const Batch& batch, const Batch& other) {
    return batch.plant == other.plant && batch.method == other.method;
}

bool isNearer(const BatchAround& a, const BatchAround& b) {
    return std::tuple(a.daysApart, a.batch().id) < std::tuple(b.daysApart, b.batch().id);
}

void keepNearest(std::vector<BatchAround>& batches, std::size_t most) {
    if (batches.size() <= most) return;
    const auto end = batches.begin() + static_cast<std::ptrdiff_t>(most);
    std::nth_element(batches.begin(), end, batches.end(), isNearer);
    batches.erase(end, batches.end());
}

/// Seen on the day or later, or nothing was left to see.
bool isSeenUntil(int day, const Course& course, const HorizonFate& fate) {
    return fate.assessed > 0 && (course.looks.back().day >= day || fate.undecided == 0);
}

class UsualHorizons {
  public:
    UsualHorizons(PlantId own, int day, const Shelves& shelves) : fallback_(shelves.facts.horizonDay) {
        for (const Plant& plant : shelves.plants) days_[plant.id] = plant.usualRootingDaysHigh.value_or(fallback_);
        days_[own] = day;
    }
    [[nodiscard]] int of(PlantId plant) const {
        const auto found = days_.find(plant);
        return found == days_.end() ? fallback_ : found->second;
    }

  private:
    std::unordered_map<PlantId, int> days_;
    int fallback_{};
};

}  // namespace

int usualHorizonOf(PlantId plant, const Shelves& shelves) {
    const Plant* found = find(shelves.plants, plant);
    return found != nullptr ? found->usualRootingDaysHigh.value_or(shelves.facts.horizonDay) : shelves.facts.horizonDay;
}

std::vector<stats::GroupedTray> BatchesAround::trays() const {
    std::vector<stats::GroupedTray> result;
    for (const BatchAround& each : batches)
        result.push_back({.tray = {.successes = each.fate.rooted, .trials = each.fate.assessed}, .group = each.group});
    return result;
}

BatchesAround batchesAround(const Course& batch, int day, std::span<const Course> all, const Shelves& shelves) {
    const Batch& own = batch.record->batch;
    const UsualHorizons horizons(own.plant, day, shelves);
    const std::chrono::sys_days stuckOn{own.stuckOn};
    std::vector<BatchAround> ownKind, others;
    for (const Course& course : all) {
        const Batch& other = course.record->batch;
        if (other.id == own.id || course.looks.empty()) continue;
        const int apart = std::abs(static_cast<int>((std::chrono::sys_days{other.stuckOn} - stuckOn).count()));
        const HorizonFate fate = fateAt(horizons.of(other.plant), course.stuck(), course.looks);
        if (!isSeenUntil(horizons.of(other.plant), course, fate)) continue;
        (isOwnKind(own, other) ? ownKind : others)
            .push_back({.course = &course, .daysApart = apart, .group = 0, .fate = fate});
    }
    keepNearest(ownKind, mostOfOwnKind);
    keepNearest(others, mostAround - ownKind.size());
    BatchesAround around{.batches = std::move(ownKind)};
    std::map<std::pair<PlantId, MethodId>, int> groupOf{{{own.plant, own.method}, 0}};
    for (BatchAround& each : others) {
        const auto next = static_cast<int>(groupOf.size());
        each.group = groupOf.try_emplace({each.batch().plant, each.batch().method}, next).first->second;
        around.batches.push_back(each);
    }
    around.groups = static_cast<int>(groupOf.size());
    std::ranges::sort(around.batches, isNearer);
    return around;
}

}  // namespace core
