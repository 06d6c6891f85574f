// SPDX-License-Identifier: MIT
#include <algorithm>
#include <set>
#include <tuple>
#include <utility>

#include "stats/numeric/require.h"
#include "stats/time_to_event/speed_model.h"

namespace stats {
namespace {

auto speedOrder(const Observation& row) {
    return std::tuple(row.cause, row.after, row.by);
}

// A row that neither event had been seen by day 0 says nothing.
bool isInformative(const Observation& row) {
    return row.weight > 0 && (row.cause == 1 || row.after > 0);
}

}  // namespace

SpeedRows gatherSpeedRows(std::string_view function, std::span<const std::vector<Observation>> batches) {
    SpeedRows result;
    for (const auto& batch : batches) {
        requireObservations(function, batch);
        for (const Observation& row : batch) {
            if (row.cause == 2) throwDomainError(function, "cause", row.cause, "0 or 1");
            if (isInformative(row)) result.rows.push_back(row);
        }
    }
    const auto isBefore = [](const auto& a, const auto& b) { return speedOrder(a) < speedOrder(b); };
    std::sort(result.rows.begin(), result.rows.end(), isBefore);
    const auto isSame = [](const auto& a, const auto& b) { return speedOrder(a) == speedOrder(b); };
    result.rows.erase(std::unique(result.rows.begin(), result.rows.end(), isSame), result.rows.end());
    for (Observation& row : result.rows) row.weight = 0;
    for (const auto& batch : batches) {
        std::vector<SpeedRows::Counted> counted;
        for (const Observation& row : batch) {
            if (!isInformative(row)) continue;
            const auto place = std::lower_bound(result.rows.begin(), result.rows.end(), row, isBefore);
            place->weight += row.weight;
            counted.push_back({.row = static_cast<std::size_t>(place - result.rows.begin()), .weight = row.weight});
        }
        if (!counted.empty()) result.batches.push_back(std::move(counted));
    }
    return result;
}

std::optional<NoSpeedFit> whyNoSpeedFit(const SpeedRows& rows, bool everyoneRoots) {
    std::set<std::pair<double, double>> rooted;
    std::set<double> checkDays;
    double latestAfter = 0, earliestBy = std::numeric_limits<double>::infinity(), latestBy = 0;
    for (const Observation& row : rows.rows) {
        if (row.after > 0) checkDays.insert(row.after);
        if (row.cause == 0) continue;
        if (row.by == 0) return NoSpeedFit::RootedOnDayZero;
        checkDays.insert(row.by);
        rooted.insert({row.after, row.by});
        latestAfter = std::max(latestAfter, row.after);
        earliestBy = std::min(earliestBy, row.by);
        latestBy = std::max(latestBy, row.by);
    }
    if (rooted.empty()) return NoSpeedFit::NobodyRooted;
    if (checkDays.size() == 1) return NoSpeedFit::OneCheckOnly;
    // All could have rooted on the first day by which one has, and no row unrooted after it gainsays that.
    const bool isGainsaid = std::any_of(rows.rows.begin(), rows.rows.end(), [&](const Observation& row) {
        return row.cause == 0 && row.after >= earliestBy && (everyoneRoots || row.after < latestBy);
    });
    const bool isOneDayEnough = latestAfter < earliestBy && !isGainsaid;
    if (isOneDayEnough && latestAfter == 0) return NoSpeedFit::AllAtFirstCheck;
    if (isOneDayEnough || rooted.size() < 3) return NoSpeedFit::TooFewIntervals;
    return {};
}

}  // namespace stats
