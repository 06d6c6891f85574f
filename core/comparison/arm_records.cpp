// SPDX-License-Identifier: MIT
#include "core/comparison/arm_records.h"

#include <algorithm>
#include <map>
#include <tuple>

#include "stats/overdispersion/tray_interval.h"

namespace core {
namespace {

constexpr std::string_view notRecorded = "not recorded";

template <class Thing>
std::unordered_map<std::int64_t, std::string> namesById(const std::vector<Thing>& things) {
    std::unordered_map<std::int64_t, std::string> names;
    for (const Thing& thing : things) names.emplace(thing.id.value, thing.name);
    return names;
}

std::unordered_map<std::int64_t, std::string> levelNames(Factor factor, const Shelves& shelves) {
    switch (factor) {
        case Factor::Method:
            return namesById(shelves.methods);
        case Factor::Treatment:
            return namesById(shelves.treatments);
        case Factor::Medium:
            return namesById(shelves.media);
        case Factor::CuttingKind:
            return namesById(shelves.cuttingKinds);
    }
    return {};
}

std::int64_t levelOf(Factor factor, const Batch& batch) {
    switch (factor) {
        case Factor::Method:
            return batch.method.value;
        case Factor::Treatment:
            return batch.treatment.value;
        case Factor::Medium:
            return batch.medium.value;
        case Factor::CuttingKind:
            return batch.cuttingKind.value;
    }
    return 0;
}

template <class Value>
void keepDifferent(std::vector<Value>& values) {
    std::sort(values.begin(), values.end());
    values.erase(std::unique(values.begin(), values.end()), values.end());
}

void countArm(ArmRecords& records, const Shelves& shelves, int horizonDay, RateInterval interval, double level) {
    Arm& arm = records.arm;
    std::vector<StationId> stations;
    arm.batches = static_cast<int>(records.courses.size());
    for (const Course& course : records.courses) {
        arm.stuck += course.fate.stuck;
        arm.rooted += course.fate.rooted;
        arm.lost += course.fate.lost;
        arm.withdrawn += course.fate.withdrawn;
        arm.undecided += course.fate.undecided;
        arm.assessed += course.fate.assessed;
        if (course.fate.assessed > 0)
            arm.counted.push_back(
                {.code = course.record->batch.code, .rooted = course.fate.rooted, .assessed = course.fate.assessed});
        if (course.record->batch.station.isSet()) stations.push_back(course.record->batch.station);
    }
    keepDifferent(stations);
    arm.stations = static_cast<int>(stations.size());
    arm.losses = lossesOf(records.courses, shelves, horizonDay);
    if (arm.assessed == 0) return;
    arm.rate = static_cast<double>(arm.rooted) / arm.assessed;
    arm.asCounted = rateLimits(interval, arm.rooted, arm.assessed, level);
    const stats::TrayInterval spread = stats::trayInterval(records.trays(), level);
    if (spread.includesTrayVariation) arm.withSpread = Limits{.low = spread.limits.low, .high = spread.limits.high};
}

}  // namespace

std::vector<stats::Tray> ArmRecords::trays() const {
    std::vector<stats::Tray> result;
    for (const Course& course : courses)
        if (course.fate.assessed > 0)
            result.push_back({.successes = course.fate.rooted, .trials = course.fate.assessed});
    return result;
}

std::vector<StationId> ArmRecords::stations() const {
    std::vector<StationId> result;
    for (const Course& course : courses)
        if (course.fate.assessed > 0) result.push_back(course.record->batch.station);
    keepDifferent(result);
    return result;
}

std::vector<PlantId> ArmRecords::plants() const {
    std::vector<PlantId> result;
    for (const Course& course : courses) result.push_back(course.record->batch.plant);
    keepDifferent(result);
    return result;
}

std::vector<const BatchRecord*> batchesOf(const ComparisonQuestion& question, std::span<const BatchRecord> batches) {
    std::vector<const BatchRecord*> result;
    for (const BatchRecord& record : batches) {
        if (question.plant.isSet() && record.batch.plant != question.plant) continue;
        if (question.trial && record.batch.trial != *question.trial) continue;
        result.push_back(&record);
    }
    return result;
}

std::vector<ArmRecords> armsOf(Factor factor, const Shelves& shelves, std::span<const BatchRecord* const> batches,
                               int horizonDay, RateInterval interval, double level) {
    const auto names = levelNames(factor, shelves);
    std::map<std::int64_t, ArmRecords> byLevel;
    for (const BatchRecord* record : batches)
        byLevel[levelOf(factor, record->batch)].courses.push_back(courseOf(*record, horizonDay));
    std::vector<ArmRecords> arms;
    for (auto& [id, records] : byLevel) {
        const auto name = names.find(id);
        records.arm.name = name == names.end() ? std::string(notRecorded) : name->second;
        countArm(records, shelves, horizonDay, interval, level);
        arms.push_back(std::move(records));
    }
    std::stable_sort(arms.begin(), arms.end(), [](const ArmRecords& a, const ArmRecords& b) {
        return std::tuple(-a.arm.stuck, std::string_view(a.arm.name)) <
               std::tuple(-b.arm.stuck, std::string_view(b.arm.name));
    });
    return arms;
}

std::vector<LossByCause> lossesOf(std::span<const Course> courses, const Shelves& shelves, int horizonDay) {
    std::map<std::int64_t, int> countOf;
    for (const Course& course : courses) {
        for (const Check& check : course.record->checks) {
            if (daysBetween(course.record->batch.stuckOn, check.checkedOn) > horizonDay) continue;
            for (const Loss& loss : check.losses) countOf[loss.cause.value] += loss.count;
        }
    }
    const auto names = namesById(shelves.lossCauses);
    std::vector<LossByCause> losses;
    for (const auto& [id, count] : countOf) {
        const auto name = names.find(id);
        if (count > 0)
            losses.push_back({.cause = name == names.end() ? "cause not known" : name->second, .count = count});
    }
    std::stable_sort(losses.begin(), losses.end(), [](const LossByCause& a, const LossByCause& b) {
        return std::tuple(-a.count, std::string_view(a.cause)) < std::tuple(-b.count, std::string_view(b.cause));
    });
    return losses;
}

}  // namespace core
