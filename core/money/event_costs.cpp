// SPDX-License-Identifier: MIT
#include <algorithm>
#include <map>
#include <set>
#include <unordered_map>

#include "core/money/costing.h"

namespace core {
namespace {

/// Batches of one session; those of no known session are put together by their day.
using Sessions = std::map<std::pair<SessionId, int>, std::vector<std::size_t>>;

std::pair<SessionId, int> sessionOf(const Batch& batch) {
    return {batch.session, batch.session.isSet() ? 0 : dayNumber(batch.stuckOn)};
}

Sessions sessionsOf(std::span<const BatchRecord> batches) {
    Sessions sessions;
    for (std::size_t i = 0; i < batches.size(); ++i) sessions[sessionOf(batches[i].batch)].push_back(i);
    return sessions;
}

/// What is charged, and what would have been had an hour had a price.
struct Purse {
    Costing& costing;
    CostLedger& ledger;
    std::set<int> missingDays{};
    std::set<std::size_t> missingFor{};

    [[nodiscard]] const Batch& batch(std::size_t place) const { return costing.spending.batches[place].batch; }

    /// Nothing: noted as missing.
    std::optional<double> costOfWork(double minutes, int day, std::span<const std::size_t> members) {
        if (minutes <= 0) return 0;
        if (const std::optional<double> hour = costing.hour.on(day)) return minutes / 60 * *hour;
        missingDays.insert(day);
        missingFor.insert(members.begin(), members.end());
        return {};
    }
    void closeWorkOf(const std::string& what) {
        const std::vector<int> days(missingDays.begin(), missingDays.end());
        const std::vector<std::size_t> members(missingFor.begin(), missingFor.end());
        ledger.noteMissing("No hour of work is priced", "the work of " + what, days, members);
        missingDays.clear();
        missingFor.clear();
    }
    /// By cuttings stuck.
    void share(std::span<const std::size_t> members, CostPart part, const std::string& what, double amount) {
        double cuttings = 0;
        for (const std::size_t member : members) cuttings += batch(member).stuck;
        if (cuttings <= 0) return;
        for (const std::size_t member : members)
            ledger.charge(member, part, what, amount * batch(member).stuck / cuttings);
    }
};

class EventCosts {
  public:
    EventCosts(Costing& costing, CostLedger& ledger)
        : purse_{.costing = costing, .ledger = ledger}, sessions_(sessionsOf(costing.spending.batches)) {
        for (const Expense& expense : costing.spending.expenses)
            if (expense.session.isSet() && expense.minutes) timed_.insert(expense.session);
    }

    void charge(const Price& price, DaySpan held) {
        if (price.kind == PriceKind::Lasting && price.lastsFor)
            chargePack(price, held, CostPart::Lasting, PriceBasis::Batch);
        if (price.kind == PriceKind::UsedUp) chargePack(price, held, CostPart::UsedUp, price.basis);
        if (price.kind == PriceKind::WorkTime) {
            chargeWork(price, held);
            purse_.closeWorkOf(price.what);
        }
    }

    void charge(const Expense& expense) {
        const std::vector<std::size_t> members = bearersOf(expense);
        if (members.empty()) return noteUnborne(expense);
        const std::string& what = expense.what;
        purse_.share(members, CostPart::WrittenDown, what, static_cast<double>(expense.hundredths) / 100);
        const auto work = purse_.costOfWork(expense.minutes.value_or(0), dayNumber(expense.spentOn), members);
        purse_.share(members, CostPart::Work, what, work.value_or(0));
        purse_.closeWorkOf(what);
    }

  private:
    [[nodiscard]] int stuckDay(std::size_t member) const { return dayNumber(purse_.batch(member).stuckOn); }

    /// Those of a session that share the price, while it holds.
    [[nodiscard]] std::vector<std::size_t> sharersIn(const std::vector<std::size_t>& session, const Price& price,
                                                     DaySpan held) const {
        std::vector<std::size_t> members;
        for (const std::size_t member : session)
            if (held.holds(stuckDay(member)) && isSharedBy(purse_.batch(member), price)) members.push_back(member);
        return members;
    }

    void chargePack(const Price& price, DaySpan held, CostPart part, PriceBasis basis) {
        if (!price.lastsFor || *price.lastsFor <= 0) return;
        const double ofEach = amountOf(price) / *price.lastsFor;
        if (basis == PriceBasis::Session) {
            for (const auto& [id, session] : sessions_)
                purse_.share(sharersIn(session, price, held), part, price.what, ofEach);
            return;
        }
        for (const std::size_t member : purse_.costing.scopeOf(price).members) {
            if (!held.holds(stuckDay(member))) continue;
            const double times = basis == PriceBasis::Cutting ? purse_.batch(member).stuck : 1;
            purse_.ledger.charge(member, part, price.what, ofEach * times);
        }
    }

    void chargeWork(const Price& price, DaySpan held) {
        if (price.basis == PriceBasis::Session) return chargeSessions(price, held);
        if (price.basis == PriceBasis::Check) return chargeChecks(price, held);
        if (price.basis == PriceBasis::Care) return;  // shared by the cuttings that stand: chargeDays()
        for (const std::size_t member : purse_.costing.scopeOf(price).members) {
            if (!held.holds(stuckDay(member))) continue;
            const double times = price.basis == PriceBasis::Cutting ? purse_.batch(member).stuck : 1;
            const auto cost = purse_.costOfWork(price.minutes * times, stuckDay(member), {&member, 1});
            purse_.ledger.charge(member, CostPart::Work, price.what, cost.value_or(0));
        }
    }

    void chargeSessions(const Price& price, DaySpan held) {
        for (const auto& [id, session] : sessions_) {
            if (id.first.isSet() && timed_.contains(id.first)) continue;
            const std::vector<std::size_t> members = sharersIn(session, price, held);
            if (members.empty()) continue;
            const auto cost = purse_.costOfWork(price.minutes, stuckDay(members.front()), members);
            purse_.share(members, CostPart::Work, price.what, cost.value_or(0));
        }
    }

    void chargeChecks(const Price& price, DaySpan held) {
        for (const std::size_t member : purse_.costing.scopeOf(price).members) {
            for (const Check& check : purse_.costing.spending.batches[member].checks) {
                const int day = dayNumber(check.checkedOn);
                if (!held.holds(day)) continue;
                const auto cost = purse_.costOfWork(price.minutes, day, {&member, 1});
                purse_.ledger.charge(member, CostPart::Work, price.what, cost.value_or(0));
            }
        }
    }

    [[nodiscard]] std::vector<std::size_t> bearersOf(const Expense& expense) {
        if (expense.session.isSet()) {
            const auto session = sessions_.find({expense.session, 0});
            return session == sessions_.end() ? std::vector<std::size_t>{} : session->second;
        }
        if (places_.empty())
            for (std::size_t i = 0; i < purse_.costing.spending.batches.size(); ++i)
                places_.emplace(purse_.batch(i).id, i);
        const auto place = places_.find(expense.batch);
        return place == places_.end() ? std::vector<std::size_t>{} : std::vector{place->second};
    }

    void noteUnborne(const Expense& expense) {
        for (const Session& session : purse_.costing.spending.sessions)
            if (session.id == expense.session && session.id.isSet())
                purse_.ledger.note("Nothing was stuck in the session of " + isoText(session.date) + ", so what was " +
                                   "written down for it (" + expense.what + ") is in no batch.");
    }

    Purse purse_;
    Sessions sessions_;
    std::set<SessionId> timed_;
    std::unordered_map<BatchId, std::size_t> places_;
};

}  // namespace

void chargeEvents(Costing& costing, CostLedger& ledger, const std::stop_token& stop) {
    EventCosts events(costing, ledger);
    const std::span<const Price> prices = costing.spending.shelves.prices;
    for (std::size_t i = 0; i < prices.size() && !stop.stop_requested(); ++i) events.charge(prices[i], costing.held[i]);
    for (const Expense& expense : costing.spending.expenses) {
        if (stop.stop_requested()) return;
        if (expense.spentOn <= costing.spending.today) events.charge(expense);
    }
}

}  // namespace core
