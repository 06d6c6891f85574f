// SPDX-License-Identifier: MIT
#include "app/report/batch_costs.h"

#include <QCoreApplication>

#include "app/plot/cost_text.h"
#include "app/plot/number_text.h"

namespace report {
namespace {

struct CostWords {
    Q_DECLARE_TR_FUNCTIONS(BatchCosts)
};

}  // namespace

std::optional<WholeCost> wholeCostOf(const core::CostsOfBatches& costs, core::BatchId batch) {
    const core::CostOfBatch* cost = costs.of(batch);
    if (cost == nullptr || !costs.isAnythingPriced) return {};
    WholeCost whole{.cost = *cost, .missing = {}};
    for (const std::size_t sentence : cost->missing) whole.missing.push_back(costs.missing[sentence]);
    return whole;
}

QString costsInWords(const core::CostOfBatch& cost, const core::Tally& tally, bool isClosed,
                     const std::string& currency) {
    const double sum = cost.parts.total();
    const QString all = plot::costText(sum, currency);
    if (tally.rooted == 0 && isClosed)
        return CostWords::tr("%1 in all; none rooted, so there is no figure for each").arg(all);
    if (tally.rooted == 0) return CostWords::tr("%1 in all; none rooted yet, so there is no figure for each").arg(all);
    return CostWords::tr("%1 in all, %2 for each of %3 rooted so far")
        .arg(all, plot::costText(sum / tally.rooted, currency), plot::countText(tally.rooted));
}

QString costPartsInWords(const core::CostOfBatch& cost) {
    QStringList parts;
    for (const core::CostPart part : core::allCostParts)
        if (cost.parts.of(part) > 0)
            parts << CostWords::tr("%1 %2", "a part of the cost, its amount")
                         .arg(plot::costPartText(part), plot::costAmount(cost.parts.of(part)));
    return parts.join(CostWords::tr(", ", "between parts of the cost"));
}

}  // namespace report
