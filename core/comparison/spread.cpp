// SPDX-License-Identifier: MIT
#include "core/comparison/spread.h"

#include <map>
#include <tuple>

#include "stats/overdispersion/intraclass_correlation.h"

namespace core {
namespace {

using LikeBatches = std::tuple<PlantId, MethodId, TreatmentId, MediumId, CuttingKindId>;

std::vector<std::vector<stats::Tray>> groupsOfLikeBatches(std::span<const BatchRecord> batches, int horizonDay) {
    std::map<LikeBatches, std::vector<stats::Tray>> traysOf;
    for (const BatchRecord& record : batches) {
        const Batch& batch = record.batch;
        const HorizonFate fate = fateAt(horizonDay, batch.stuck, looksOf(record));
        if (fate.assessed > 0)
            traysOf[{batch.plant, batch.method, batch.treatment, batch.medium, batch.cuttingKind}].push_back(
                {.successes = fate.rooted, .trials = fate.assessed});
    }
    std::vector<std::vector<stats::Tray>> groups;
    for (auto& [like, trays] : traysOf)
        if (trays.size() > 1) groups.push_back(std::move(trays));  // a batch alone in its group shows no spread
    return groups;
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
    return stats::pooledSpread(groupsOfLikeBatches(wholeLogbook, horizonDay), level);
}

Spread spreadOf(std::span<const BatchRecord> wholeLogbook, int horizonDay, std::span<const ArmRecords> arms,
                double level) {
    const stats::PooledSpread pooled = pooledSpreadOf(wholeLogbook, horizonDay, level);
    return {.intraclassCorrelation = pooled.correlation,
            .limits = {.low = pooled.limits.low, .high = pooled.limits.high},
            .designEffect = designEffectOf(arms, pooled.correlation),
            .isFromRecords = pooled.basis == stats::SpreadBasis::RecordsAndPrior,
            .weightOfRecords = pooled.weightOfRecords,
            .groups = pooled.groups,
            .batches = pooled.batches};
}

}  // namespace core
