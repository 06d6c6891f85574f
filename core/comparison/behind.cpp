// SPDX-License-Identifier: MIT
#include "core/comparison/behind.h"

#include <algorithm>

#include "core/comparison/spread.h"

namespace core {

namespace {

int horizonOf(PlantId plant, const Shelves& shelves) {
    const Plant* known = find(shelves.plants, plant);
    return known != nullptr && known->usualRootingDaysHigh ? *known->usualRootingDaysHigh : shelves.facts.horizonDay;
}

bool isGoingOn(const BatchRecord& record) {
    return !record.checks.empty() && !isClosed(record.batch, tallyOf(record.batch, record.checks));
}

std::vector<Course> earlierLike(const Batch& batch, std::span<const Course> courses) {
    std::vector<Course> earlier;
    for (const Course& course : courses) {
        const Batch& other = course.record->batch;
        if (other.id != batch.id && other.method == batch.method && other.stuckOn < batch.stuckOn)
            earlier.push_back(course);
    }
    return earlier;
}

// To learn the spread anew without each batch takes time, so only where there is something to be found.
bool mayBeOdd(const AgainstThePast& against, double falseAlarmRate) {
    constexpr double farFromOdd = 0.25;
    return against.chanceOfSoFew < std::max(farFromOdd, 2 * falseAlarmRate);
}

}  // namespace

std::vector<BehindThePast> batchesBehind(std::span<const BatchRecord> all, const Shelves& shelves, Date today) {
    std::vector<BehindThePast> behind;
    if (std::ranges::none_of(all, isGoingOn)) return behind;
    const int horizonDay = horizonOf(all.front().batch.plant, shelves);
    std::vector<Course> courses;
    for (const BatchRecord& record : all) courses.push_back(courseOf(record, horizonDay, today));
    const stats::PooledSpread spread = pooledSpreadOf(all, horizonDay, shelves.facts.level);
    for (const Course& course : courses) {
        const Batch& batch = course.record->batch;
        if (!isGoingOn(*course.record)) continue;
        const std::vector<Course> earlier = earlierLike(batch, courses);
        auto against = againstThePast(course, earlier, horizonDay, spread);
        if (!against || !mayBeOdd(*against, shelves.facts.falseAlarmRate)) continue;
        against = againstThePast(course, earlier, horizonDay,
                                 pooledSpreadWithout(all, batch.id, horizonDay, shelves.facts.level));
        if (against && against->chanceOfSoFew < shelves.facts.falseAlarmRate)
            behind.push_back({.batch = batch.id, .code = batch.code, .against = std::move(*against)});
    }
    std::ranges::stable_sort(behind, {}, [](const BehindThePast& one) { return one.against.chanceOfSoFew; });
    return behind;
}

}  // namespace core
