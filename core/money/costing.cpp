// SPDX-License-Identifier: MIT
#include "core/money/costing.h"

#include <algorithm>

namespace core {
namespace {

DaySpan daysOfLogbook(const Spending& spending) {
    DaySpan days{.from = dayNumber(spending.today) + 1, .to = dayNumber(spending.today)};
    for (const BatchRecord& record : spending.batches) days.from = std::min(days.from, dayNumber(record.batch.stuckOn));
    return days;
}

DaySpan heldDays(const Price& price, std::span<const Price> all, DaySpan days) {
    const std::optional<Date> last = lastDayOf(price, all);
    return DaySpan{.from = dayNumber(price.from), .to = last ? dayNumber(*last) : days.to}.within(days);
}

std::size_t placeIn(DaySpan days, int day) {
    return static_cast<std::size_t>(day - days.from);
}

}  // namespace

RateOfDay::RateOfDay(PriceKind kind, const Spending& spending, DaySpan days) : days_(days) {
    if (days.to < days.from) return;
    rates_.resize(placeIn(days, days.to) + 1);
    std::vector<const Price*> prices;
    for (const Price& price : spending.shelves.prices)
        if (price.kind == kind) prices.push_back(&price);
    std::ranges::stable_sort(prices, {}, [](const Price* price) { return price->from; });
    for (const Price* price : prices) {
        const DaySpan held = heldDays(*price, spending.shelves.prices, days);
        for (int day = held.from; day <= held.to; ++day) rates_[placeIn(days, day)] = amountOf(*price);
    }
}

std::optional<double> RateOfDay::on(int day) const {
    return days_.holds(day) ? rates_[placeIn(days_, day)] : std::nullopt;
}

Costing::Costing(const Spending& all)
    : spending(all),
      days(daysOfLogbook(all)),
      tariff(PriceKind::Tariff, all, days),
      hour(PriceKind::HourOfWork, all, days) {
    stands.reserve(all.batches.size());
    for (const BatchRecord& record : all.batches) stands.push_back(standsOf(record, all.today));
    for (const Price& price : all.shelves.prices) held.push_back(heldDays(price, all.shelves.prices, days));
}

const Scope& Costing::scopeOf(const Price& price) {
    const std::vector<std::int64_t> owner{price.method.value, price.station.value, price.medium.value,
                                          price.treatment.value};
    const auto known = scopes.find(owner);
    if (known != scopes.end()) return known->second;
    std::vector<std::size_t> members;
    for (std::size_t i = 0; i < spending.batches.size(); ++i)
        if (isSharedBy(spending.batches[i].batch, price)) members.push_back(i);
    return scopes.emplace(owner, core::scopeOf(std::move(members), stands, days)).first->second;
}

double amountOf(const Price& price) {
    return static_cast<double>(price.tenThousandths) / 10'000;
}

bool isSharedBy(const Batch& batch, const Price& price) {
    if (price.method.isSet()) return batch.method == price.method;
    if (price.station.isSet()) return batch.station == price.station;
    if (price.medium.isSet()) return batch.medium == price.medium;
    if (price.treatment.isSet()) return batch.treatment == price.treatment;
    return true;
}

bool isOwnThing(const Price& price) {
    return price.kind == PriceKind::Lasting && price.lastsYears && (price.method.isSet() || price.station.isSet());
}

}  // namespace core
