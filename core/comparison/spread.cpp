// SPDX-License-Identifier: MIT
#include "core/comparison/spread.h"

#include <map>
#include <tuple>

#include "stats/proportion/wilson_interval.h"

#include "stats/overdispersion/intraclass_correlation.h"

namespace core {
namespace {

using LikeBatches = std::tuple<PlantId, MethodId, TreatmentId, MediumId, CuttingKindId>;

template <class IsCounted>
std::vector<std::vector<BatchCount>> groupsOfLikeBatches(std::span<const BatchRecord> batches, int horizonDay,
                                                         const IsCounted& isCounted) {
    std::map<LikeBatches, std::vector<BatchCount>> countsOf;
    for (const BatchRecord& record : batches) {
        const Batch& batch = record.batch;
        if (!isCounted(batch)) continue;
        const HorizonFate fate = fateAt(horizonDay, batch.stuck, looksOf(record));
        if (fate.assessed > 0)
            countsOf[{batch.plant, batch.method, batch.treatment, batch.medium, batch.cuttingKind}].push_back(
                {.code = batch.code, .rooted = fate.rooted, .assessed = fate.assessed});
    }
    std::vector<std::vector<BatchCount>> groups;
    for (auto& [like, counts] : countsOf)
        if (counts.size() > 1) groups.push_back(std::move(counts));  // a batch alone in its group shows no spread
    return groups;
}

std::vector<std::vector<BatchCount>> groupsOfLikeBatches(std::span<const BatchRecord> batches, int horizonDay) {
    return groupsOfLikeBatches(batches, horizonDay, [](const Batch&) { return true; });
}

stats::PooledSpread pooledOverGroups(const std::vector<std::vector<BatchCount>>& groups, double level) {
    std::vector<std::vector<stats::Tray>> trays;
    for (const auto& group : groups) {
        trays.emplace_back();
        for (const BatchCount& batch : group)
            trays.back().push_back({.successes = batch.rooted, .trials = batch.assessed});
    }
    return stats::pooledSpread(trays, level);
}

// Of batches of unequal size it takes the mean size weighted by size.
double designEffectOf(std::span<const ArmRecords> arms, double correlation) {
    double cuttings = 0, squares = 0;
    for (const ArmRecords& records : arms) {
        for (const Course& course : records.courses) {
            cuttings += course.fate.assessed;
            squares += static_cast<double>(course.fate.assessed) * course.fate.assessed;
        }
    }
    return cuttings > 0 ? 1 + (squares / cuttings - 1) * correlation : 1;
}

}  // namespace

stats::PooledSpread pooledSpreadOf(std::span<const BatchRecord> wholeLogbook, int horizonDay, double level) {
    return pooledOverGroups(groupsOfLikeBatches(wholeLogbook, horizonDay), level);
}

stats::PooledSpread pooledSpreadWithout(std::span<const BatchRecord> wholeLogbook, BatchId judged, int horizonDay,
                                        double level) {
    const auto isOther = [&](const Batch& batch) { return batch.id != judged; };
    return pooledOverGroups(groupsOfLikeBatches(wholeLogbook, horizonDay, isOther), level);
}

stats::PooledSpread pooledSpreadOfOthers(std::span<const BatchRecord> wholeLogbook, PlantId plant, MethodId method,
                                         int horizonDay, double level) {
    const auto isOther = [&](const Batch& batch) { return batch.plant != plant || batch.method != method; };
    return pooledOverGroups(groupsOfLikeBatches(wholeLogbook, horizonDay, isOther), level);
}

void borrowSpread(const Spread& spread, double level, ArmRecords& records) {
    Arm& arm = records.arm;
    if (arm.withSpread || arm.assessed == 0 || records.trays().size() < 2) return;
    const double effective = arm.assessed / designEffectOf({&records, 1}, spread.intraclassCorrelation);
    const stats::Interval wilson = stats::wilsonIntervalOfEffective(*arm.rate, effective, level);
    arm.withSpread = Limits{.low = wilson.low, .high = wilson.high};
    arm.isSpreadBorrowed = true;
}

Spread spreadOf(std::span<const BatchRecord> wholeLogbook, int horizonDay, std::span<const ArmRecords> arms,
                double level) {
    std::vector<std::vector<BatchCount>> groups = groupsOfLikeBatches(wholeLogbook, horizonDay);
    const stats::PooledSpread pooled = pooledOverGroups(groups, level);
    return {.intraclassCorrelation = pooled.correlation,
            .limits = {.low = pooled.limits.low, .high = pooled.limits.high},
            .designEffect = designEffectOf(arms, pooled.correlation),
            .isFromRecords = pooled.basis == stats::SpreadBasis::RecordsAndPrior,
            .weightOfRecords = pooled.weightOfRecords,
            .likeBatches = std::move(groups),
            .groups = pooled.groups,
            .batches = pooled.batches};
}

}  // namespace core
