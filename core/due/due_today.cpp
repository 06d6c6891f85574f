// SPDX-License-Identifier: MIT
#include "core/due/due_today.h"

#include <algorithm>
#include <limits>
#include <map>
#include <string_view>
#include <tuple>
#include <unordered_map>
#include <utility>

namespace core {

namespace {

/// Looked up once for each pair of plant and method: a list of batches asks for the same few again and again.
class Schedules {
  public:
    explicit Schedules(const Shelves& shelves) : shelves_(shelves) {}

    [[nodiscard]] Date nextCheckOn(const BatchLine& line) {
        const auto [found, isNew] = known_.try_emplace(std::pair(line.batch.plant, line.batch.method));
        if (isNew) found->second = scheduleFor(line.batch.plant, line.batch.method, shelves_);
        if (line.tally.lastCheckedOn) return addDays(*line.tally.lastCheckedOn, found->second.everyDays);
        return addDays(line.batch.stuckOn, found->second.firstAfterDays);
    }

  private:
    const Shelves& shelves_;
    std::map<std::pair<PlantId, MethodId>, CheckSchedule> known_;
};

}  // namespace

CheckSchedule scheduleFor(PlantId plant, MethodId method, const Shelves& shelves) {
    if (const Plant* known = find(shelves.plants, plant))
        if (const CheckSchedule* schedule = find(shelves.checkSchedules, known->checkSchedule)) return *schedule;
    if (const Method* known = find(shelves.methods, method))
        if (const CheckSchedule* schedule = find(shelves.checkSchedules, known->checkSchedule)) return *schedule;
    return {.firstAfterDays = shelves.facts.firstCheckAfterDays, .everyDays = shelves.facts.checkEveryDays};
}

Date nextCheckOn(const BatchLine& line, const Shelves& shelves) {
    return Schedules(shelves).nextCheckOn(line);
}

std::vector<DueBatch> dueOn(Date today, std::span<const BatchLine> lines, const Shelves& shelves) {
    std::unordered_map<StationId, const Station*> stations;
    for (const Station& station : shelves.stations) stations.emplace(station.id, &station);
    Schedules schedules(shelves);
    std::vector<DueBatch> due;
    for (const BatchLine& line : lines) {
        if (isClosed(line.batch, line.tally)) continue;
        const Date day = schedules.nextCheckOn(line);
        if (day <= today) due.push_back({.line = line, .dueOn = day, .daysOverdue = daysBetween(day, today)});
    }
    // Stations may share a place in the walk, so the name decides next: batches of one station stay together.
    const auto placeInWalk = [&stations](const DueBatch& batch) {
        const auto found = stations.find(batch.line.batch.station);
        const bool isKnown = found != stations.end();
        return std::tuple(isKnown ? found->second->walkingOrder : std::numeric_limits<int>::max(), !isKnown,
                          isKnown ? std::string_view(found->second->name) : std::string_view(),
                          std::string_view(batch.line.batch.code));
    };
    std::ranges::sort(due, {}, placeInWalk);
    return due;
}

}  // namespace core
