// SPDX-License-Identifier: MIT
#include "core/due/due_today.h"

#include <algorithm>
#include <limits>
#include <string_view>
#include <tuple>
#include <unordered_map>

namespace core {

Date nextCheckOn(const BatchLine& line, const LogbookFacts& facts) {
    if (line.tally.lastCheckedOn) return addDays(*line.tally.lastCheckedOn, facts.checkEveryDays);
    return addDays(line.batch.stuckOn, facts.firstCheckAfterDays);
}

std::vector<DueBatch> dueOn(Date today, std::span<const BatchLine> lines, const Shelves& shelves) {
    std::unordered_map<StationId, const Station*> stations;
    for (const Station& station : shelves.stations) stations.emplace(station.id, &station);
    std::vector<DueBatch> due;
    for (const BatchLine& line : lines) {
        const Date day = nextCheckOn(line, shelves.facts);
        if (!isClosed(line.batch, line.tally) && day <= today)
            due.push_back({.line = line, .dueOn = day, .daysOverdue = daysBetween(day, today)});
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
