// SPDX-License-Identifier: MIT
#include <algorithm>
#include <map>
#include <unordered_map>

#include "core/money/batch_cost.h"
#include "core/money/costing.h"

namespace core {
namespace {

constexpr double daysOfAYear = 365;

void chargeLasting(const Price& price, DaySpan held, Costing& costing, CostLedger& ledger) {
    if (!price.lastsYears || *price.lastsYears <= 0) return;
    const double ofADay = amountOf(price) / (*price.lastsYears * daysOfAYear);
    const Scope& scope = costing.scopeOf(price);
    const SharedOut shared = shareOut(scope, costing.stands, held, [ofADay](int) { return ofADay; });
    for (std::size_t i = 0; i < scope.members.size(); ++i) {
        if (isOwnThing(price))
            ledger.chargeOwnThing(scope.members[i], price.what, shared.amounts[i]);
        else
            ledger.charge(scope.members[i], CostPart::Lasting, price.what, shared.amounts[i]);
    }
    ledger.noteEmpty(price, CostPart::Lasting, shared.emptyDays, shared.emptyAmount);
}

std::vector<std::size_t> membersMissing(const Scope& scope, const SharedOut& shared) {
    std::vector<std::size_t> members;
    for (std::size_t i = 0; i < scope.members.size(); ++i)
        if (shared.hasMissing[i]) members.push_back(scope.members[i]);
    return members;
}

void chargeElectricity(const Price& price, DaySpan held, Costing& costing, CostLedger& ledger) {
    const ElectricLoad load{.watts = price.watts, .hoursADay = price.hoursADay, .days = 1, .duty = price.duty};
    const Result<double> ofADay = kilowattHours({&load, 1});
    if (!ofADay || *ofADay == 0) return;
    const Scope& scope = costing.scopeOf(price);
    // What isn't needed is switched off: an empty day costs nothing.
    const auto costOf = [&](int day) -> std::optional<double> {
        if (scope.standingOn(day) <= 0) return 0;
        const std::optional<double> tariff = costing.tariff.on(day);
        if (!tariff) return {};
        return *ofADay * *tariff;
    };
    const SharedOut shared = shareOut(scope, costing.stands, held, costOf);
    for (std::size_t i = 0; i < scope.members.size(); ++i)
        ledger.charge(scope.members[i], CostPart::Electricity, price.what, shared.amounts[i]);
    ledger.noteMissing("No tariff holds", "the electricity of " + price.what, shared.missingDays,
                       membersMissing(scope, shared));
}

/// How often which station was seen to on which day.
using CareByStation = std::map<StationId, std::unordered_map<int, int>>;

/// Care has a moment; the day is the one on which that falls where the bench stands.
class LocalDays {
  public:
    explicit LocalDays(const DayStart& dayStart) : dayStart_(dayStart) {}

    [[nodiscard]] int dayOf(Moment moment) {
        int day = static_cast<int>(std::chrono::floor<std::chrono::days>(moment).time_since_epoch().count());
        if (!dayStart_) return day;
        if (moment < startOf(day)) return day - 1;
        return moment < startOf(day + 1) ? day : day + 1;
    }

  private:
    Moment startOf(int day) {
        const auto known = starts_.find(day);
        return known != starts_.end() ? known->second
                                      : starts_.emplace(day, dayStart_(dateOfDayNumber(day))).first->second;
    }

    const DayStart& dayStart_;
    std::unordered_map<int, Moment> starts_;
};

CareByStation careByStation(const Spending& spending) {
    CareByStation times;
    LocalDays local(spending.dayStart);
    for (const Care& care : spending.care) ++times[care.station][local.dayOf(care.doneAt)];
    return times;
}

bool canConcern(StationId station, const Price& price, const Shelves& shelves) {
    if (price.station.isSet()) return price.station == station;
    if (!price.method.isSet()) return true;
    const Station* known = find(shelves.stations, station);
    return known != nullptr && known->method == price.method;
}

/// Who stands at one station; a scope for each price that is shared by only some of them.
struct AtStation {
    StationId station{};
    const std::unordered_map<int, int>* times{};
    Scope all{};
};

Scope sharersAt(const AtStation& at, const Price& price, const Costing& costing) {
    std::vector<std::size_t> members;
    for (const std::size_t member : at.all.members)
        if (isSharedBy(costing.spending.batches[member].batch, price)) members.push_back(member);
    if (members.size() == at.all.members.size()) return at.all;
    return scopeOf(std::move(members), costing.stands, costing.days);
}

void chargeCareAt(const AtStation& at, const Price& price, DaySpan held, const Costing& costing, CostLedger& ledger) {
    const Scope scope = sharersAt(at, price, costing);
    const bool isOwnersStation = canConcern(at.station, price, costing.spending.shelves);
    int emptyTimes = 0;
    double emptyAmount = 0;
    const auto costOf = [&](int day) -> std::optional<double> {
        const auto times = at.times->find(day);
        if (times == at.times->end()) return 0;
        const std::optional<double> hour = costing.hour.on(day);
        if (!hour) return {};
        const double cost = times->second * price.minutes / 60 * *hour;
        if (scope.standingOn(day) <= 0) {
            const bool isEmpty = isOwnersStation && at.all.standingOn(day) <= 0;
            emptyTimes += isEmpty && cost > 0 ? times->second : 0;
            emptyAmount += isEmpty ? cost : 0;
        }
        return cost;
    };
    const SharedOut shared = shareOut(scope, costing.stands, held, costOf);
    for (std::size_t i = 0; i < scope.members.size(); ++i)
        ledger.charge(scope.members[i], CostPart::Work, price.what, shared.amounts[i]);
    ledger.noteEmpty(price, CostPart::Work, emptyTimes, emptyAmount);
    ledger.noteMissing("No hour of work is priced", "the work of " + price.what, shared.missingDays,
                       membersMissing(scope, shared));
}

void chargeCare(Costing& costing, CostLedger& ledger, const std::stop_token& stop) {
    const std::span<const Price> prices = costing.spending.shelves.prices;
    const auto isOfCare = [](const Price& price) {
        return price.kind == PriceKind::WorkTime && price.basis == PriceBasis::Care;
    };
    if (std::ranges::none_of(prices, isOfCare)) return;
    std::unordered_map<StationId, std::vector<std::size_t>> membersOf;
    for (std::size_t i = 0; i < costing.spending.batches.size(); ++i)
        membersOf[costing.spending.batches[i].batch.station].push_back(i);
    for (const auto& [station, times] : careByStation(costing.spending)) {
        const AtStation at{.station = station,
                           .times = &times,
                           .all = scopeOf(std::move(membersOf[station]), costing.stands, costing.days)};
        for (std::size_t i = 0; i < prices.size() && !stop.stop_requested(); ++i)
            if (isOfCare(prices[i])) chargeCareAt(at, prices[i], costing.held[i], costing, ledger);
    }
}

}  // namespace

void chargeDays(Costing& costing, CostLedger& ledger, const std::stop_token& stop) {
    const std::span<const Price> prices = costing.spending.shelves.prices;
    for (std::size_t i = 0; i < prices.size() && !stop.stop_requested(); ++i) {
        if (prices[i].kind == PriceKind::Lasting) chargeLasting(prices[i], costing.held[i], costing, ledger);
        if (prices[i].kind == PriceKind::Electricity) chargeElectricity(prices[i], costing.held[i], costing, ledger);
    }
    chargeCare(costing, ledger, stop);
}

}  // namespace core
