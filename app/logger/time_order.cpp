// SPDX-License-Identifier: MIT
#include "app/logger/time_order.h"

#include <algorithm>
#include <cstdlib>

namespace logger {

void TimeOrder::see(std::string_view cell) {
    const auto figures = takeDay(cell);
    if (!figures) return;
    ++rows_;
    if (days_ > 0 && *figures == last_) return;
    for (Candidate& candidate : candidates_) {
        const auto day = candidate.isPossible ? dayOf(*figures, candidate.form) : std::nullopt;
        candidate.isPossible = day.has_value();
        if (!day) continue;
        if (days_ > 0 && std::abs(*day - candidate.dayBefore) == 1) ++candidate.nextDays;
        candidate.dayBefore = *day;
    }
    last_ = *figures;
    ++days_;
}

core::TimeForm TimeOrder::settled() const {
    if (days_ == 0) return core::TimeForm::NotSettled;
    const auto possible = std::ranges::count(candidates_, true, &Candidate::isPossible);
    const auto rising = std::ranges::count_if(
        candidates_, [](const Candidate& candidate) { return candidate.isPossible && candidate.nextDays > 0; });
    // One row on the first of each month looks like one row a day when month and day change places.
    const bool areManyADay = rows_ >= 2 * days_;
    for (const Candidate& candidate : candidates_)
        if (candidate.isPossible && (possible == 1 || (areManyADay && rising == 1 && candidate.nextDays > 0)))
            return candidate.form;
    return core::TimeForm::NotSettled;
}

bool TimeOrder::isCertain() const {
    return std::ranges::count(candidates_, true, &Candidate::isPossible) <= 1;
}

}  // namespace logger
