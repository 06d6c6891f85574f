// SPDX-License-Identifier: MIT
#include "core/money/costs_of_batches.h"

#include <algorithm>
#include <numeric>

#include "core/money/cost_ledger.h"
#include "core/money/costing.h"

namespace core {
namespace {

bool costsByItself(const Price& price) {
    return price.kind != PriceKind::Tariff && price.kind != PriceKind::HourOfWork && price.kind != PriceKind::DaySooner;
}

}  // namespace

std::string_view wordFor(CostPart part) {
    switch (part) {
        case CostPart::Lasting:
            return "lasting things";
        case CostPart::UsedUp:
            return "used up";
        case CostPart::Electricity:
            return "electricity";
        case CostPart::Work:
            return "work";
        case CostPart::WrittenDown:
            return "written down";
    }
    return "";
}

double CostParts::total() const {
    return std::accumulate(amounts.begin(), amounts.end(), 0.0);
}

CostParts& CostParts::operator+=(const CostParts& other) {
    for (std::size_t i = 0; i < amounts.size(); ++i) amounts[i] += other.amounts[i];
    return *this;
}

CostParts CostParts::times(double factor) const {
    CostParts result = *this;
    for (double& amount : result.amounts) amount *= factor;
    return result;
}

const CostOfBatch* CostsOfBatches::of(BatchId batch) const {
    const auto place = places.find(batch);
    return place == places.end() ? nullptr : &batches[place->second];
}

CostsOfBatches costsOfBatches(const Spending& spending, const std::stop_token& stop) {
    CostLedger ledger(spending.batches);
    Costing costing(spending);
    chargeDays(costing, ledger, stop);
    chargeEvents(costing, ledger, stop);
    CostsOfBatches costs = std::move(ledger).close();
    costs.isAnythingPriced = std::ranges::any_of(spending.shelves.prices, costsByItself) || !spending.expenses.empty();
    costs.wasStopped = stop.stop_requested();
    return costs;
}

}  // namespace core
