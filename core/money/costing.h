// SPDX-License-Identifier: MIT
// What all rules of costs look up: which prices hold when, who shares them, what a kWh and an hour cost on a day. For
// core/money/costs_of_batches.h only.
#pragma once

#include <map>
#include <optional>
#include <vector>

#include "core/money/cost_ledger.h"
#include "core/money/costs_of_batches.h"
#include "core/money/standing.h"

namespace core {

/// What a kWh or an hour costs on a day. Nothing: no such price holds, which is not the same as 0.
class RateOfDay {
  public:
    RateOfDay(PriceKind kind, const Spending& spending, DaySpan days);

    [[nodiscard]] std::optional<double> on(int day) const;

  private:
    DaySpan days_;
    std::vector<std::optional<double>> rates_;
};

struct Costing {
    const Spending& spending;
    DaySpan days;  // from the first sticking to today; none where nothing is stuck
    std::vector<std::vector<Stand>> stands{};
    std::vector<DaySpan> held{};  // of each price, within `days`
    RateOfDay tariff;
    RateOfDay hour;
    std::map<std::vector<std::int64_t>, Scope> scopes{};  // by owner: see scopeOf(price)

    explicit Costing(const Spending& spending);

    [[nodiscard]] const Scope& scopeOf(const Price& price);
};

[[nodiscard]] double amountOf(const Price& price);
/// A method's are the batches stuck by it, a station's those at it, a medium's and a treatment's those with it; with none, all.
[[nodiscard]] bool isSharedBy(const Batch& batch, const Price& price);
/// A thing that a method or a station has of its own.
[[nodiscard]] bool isOwnThing(const Price& price);

/// Lasting things by years, electricity and care: what days cost is shared by the cuttings that stand.
void chargeDays(Costing& costing, CostLedger& ledger, const std::stop_token& stop);
/// Lasting things by batches, what is used up, work, and what was written down.
void chargeEvents(Costing& costing, CostLedger& ledger, const std::stop_token& stop);

}  // namespace core
