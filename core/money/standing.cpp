// SPDX-License-Identifier: MIT
#include "core/money/standing.h"

#include <algorithm>

#include "core/comparison/course.h"

namespace core {

int dayNumber(Date date) {
    return static_cast<int>(std::chrono::sys_days(date).time_since_epoch().count());
}

Date dateOfDayNumber(int day) {
    return Date(std::chrono::sys_days(std::chrono::days(day)));
}

DaySpan DaySpan::within(DaySpan other) const {
    return {.from = std::max(from, other.from), .to = std::min(to, other.to)};
}

std::vector<Stand> standsOf(const BatchRecord& record, Date today) {
    const Batch& batch = record.batch;
    const int stuckOn = dayNumber(batch.stuckOn);
    std::vector<Stand> stands;
    int undecided = batch.stuck, from = stuckOn;
    for (const Look& look : looksOf(record, today)) {
        const int decided = look.rooted + look.lost + look.withdrawn, day = stuckOn + look.day;
        if (decided <= 0 || undecided <= 0) continue;
        if (day >= from) stands.push_back({.days = {.from = from, .to = day}, .cuttings = undecided});
        from = std::max(from, day + 1);
        undecided -= decided;
    }
    const int last = dayNumber(batch.closedOn ? std::min(*batch.closedOn, today) : today);
    if (undecided > 0 && from <= last) stands.push_back({.days = {.from = from, .to = last}, .cuttings = undecided});
    return stands;
}

double Scope::standingOn(int day) const {
    return days.holds(day) ? standing[static_cast<std::size_t>(day - days.from)] : 0;
}

Scope scopeOf(std::vector<std::size_t> members, std::span<const std::vector<Stand>> stands, DaySpan days) {
    Scope scope{.days = days, .members = std::move(members), .standing = {}};
    if (days.to < days.from) return scope;
    const auto count = static_cast<std::size_t>(days.to - days.from + 1);
    scope.standing.assign(count + 1, 0);  // first what comes and goes
    for (const std::size_t member : scope.members) {
        for (const Stand& stand : stands[member]) {
            const DaySpan part = stand.days.within(days);
            if (part.to < part.from) continue;
            scope.standing[static_cast<std::size_t>(part.from - days.from)] += stand.cuttings;
            scope.standing[static_cast<std::size_t>(part.to - days.from) + 1] -= stand.cuttings;
        }
    }
    for (std::size_t i = 1; i < count; ++i) scope.standing[i] += scope.standing[i - 1];
    scope.standing.pop_back();
    return scope;
}

SharedOut shareOut(const Scope& scope, std::span<const std::vector<Stand>> stands, DaySpan days,
                   const CostOfDay& costOf) {
    SharedOut shared;
    shared.amounts.resize(scope.members.size());
    shared.hasMissing.resize(scope.members.size());
    const DaySpan all = days.within(scope.days);
    if (all.to < all.from) return shared;
    // What one cutting has borne that stood from the first day up to the day before each.
    std::vector<double> borne{0};
    std::vector<int> missing{0};
    for (int day = all.from; day <= all.to; ++day) {
        const double standing = scope.standingOn(day);
        const std::optional<double> cost = costOf(day);
        if (standing > 0 && !cost) shared.missingDays.push_back(day);
        if (standing <= 0 && cost.value_or(0) > 0) {
            ++shared.emptyDays;
            shared.emptyAmount += *cost;
        }
        borne.push_back(borne.back() + (standing > 0 ? cost.value_or(0) / standing : 0));
        missing.push_back(missing.back() + (standing > 0 && !cost ? 1 : 0));
    }
    for (std::size_t i = 0; i < scope.members.size(); ++i) {
        for (const Stand& stand : stands[scope.members[i]]) {
            const DaySpan part = stand.days.within(all);
            if (part.to < part.from) continue;
            const auto from = static_cast<std::size_t>(part.from - all.from),
                       to = static_cast<std::size_t>(part.to - all.from) + 1;
            shared.amounts[i] += stand.cuttings * (borne[to] - borne[from]);
            if (missing[to] > missing[from]) shared.hasMissing[i] = true;
        }
    }
    return shared;
}

}  // namespace core
