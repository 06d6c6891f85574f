// SPDX-License-Identifier: MIT
#include "core/comparison/several_arms.h"

#include "stats/overdispersion/tray_analysis_of_variance.h"
#include "stats/several_proportions/chi_square_test.h"
#include "stats/several_proportions/holm_adjustment.h"

namespace core {
namespace {

constexpr std::size_t fewestBatchesAnArm = 3;

// `read` gives a pair's p, if it has one; `write` takes the adjusted one.
template <class Read, class Write>
void adjustAmongPairs(std::vector<Pair>& pairs, Read read, Write write) {
    std::vector<double> p;
    for (const Pair& pair : pairs)
        if (const std::optional<double> own = read(pair)) p.push_back(*own);
    const std::vector<double> adjusted = stats::holmAdjustment(p);
    std::size_t next = 0;
    for (Pair& pair : pairs)
        if (read(pair)) write(pair, adjusted[next++]);
}

}  // namespace

std::optional<SeveralArms> severalArmsOf(std::span<const ArmRecords> arms) {
    std::vector<stats::ArmCount> counts;
    std::vector<std::vector<stats::Tray>> trays;
    bool haveAllBatches = true;
    for (const ArmRecords& records : arms) {
        if (records.arm.assessed == 0) continue;
        counts.push_back({.successes = records.arm.rooted, .trials = records.arm.assessed});
        trays.push_back(records.trays());
        haveAllBatches = haveAllBatches && trays.back().size() >= fewestBatchesAnArm;
    }
    if (counts.size() < 2) return {};
    const stats::ChiSquareTest counted = stats::chiSquareTest(counts);
    SeveralArms answer{.arms = static_cast<int>(counts.size()),
                       .chiSquare = *counted.chiSquare,
                       .degreesOfFreedom = counted.degreesOfFreedom,
                       .chiSquareP = counted.p,
                       .smallestExpected = *counted.minExpected,
                       .f = {},
                       .batchRatesP = {}};
    if (!haveAllBatches) return answer;
    const stats::TrayAnalysisOfVariance batches = stats::trayAnalysisOfVariance(trays);
    answer.f = batches.f;
    answer.batchRatesP = batches.p;
    return answer;
}

void adjustForSeveral(std::vector<Pair>& pairs) {
    adjustAmongPairs(
        pairs, [](const Pair& pair) { return pair.batchRatesP; },
        [](Pair& pair, double p) { pair.batchRatesHolm = p; });
    adjustAmongPairs(
        pairs,
        [](const Pair& pair) {
            return pair.exactTestsLeftOut || !pair.difference ? std::optional<double>() : pair.boschloo;
        },
        [](Pair& pair, double p) { pair.boschlooHolm = p; });
}

}  // namespace core
