// SPDX-License-Identifier: MIT
// Which cuttings stand on which days, and how what a day costs is shared by them. For core/money/costs_of_batches.h only.
#pragma once

#include <functional>
#include <optional>
#include <span>
#include <vector>

#include "core/records.h"

namespace core {

/// Days are counted from 1970-01-01.
[[nodiscard]] int dayNumber(Date date);
[[nodiscard]] Date dateOfDayNumber(int day);

struct DaySpan {
    int from{};
    int to{};  // included; below `from`: none

    [[nodiscard]] bool holds(int day) const { return from <= day && day <= to; }
    [[nodiscard]] DaySpan within(DaySpan other) const;
};

/// So many cuttings stood on each of these days.
struct Stand {
    DaySpan days{};
    int cuttings{};
};

/// From the day of sticking to the day of the look that decided them or on which the batch was closed by hand, both included.
[[nodiscard]] std::vector<Stand> standsOf(const BatchRecord& record, Date today);

/// Of whom a price is, and who shares it.
struct Scope {
    DaySpan days{};                      // of `standing`
    std::vector<std::size_t> members{};  // batches, as in Spending
    std::vector<double> standing{};      // cuttings of the members, each day

    [[nodiscard]] double standingOn(int day) const;
};

/// `stands` is of all batches.
[[nodiscard]] Scope scopeOf(std::vector<std::size_t> members, std::span<const std::vector<Stand>> stands, DaySpan days);

/// What each day costs; nothing: not known.
using CostOfDay = std::function<std::optional<double>(int day)>;

struct SharedOut {
    std::vector<double> amounts{};   // of each member
    std::vector<bool> hasMissing{};  // of each member: it stood on a day whose cost isn't known
    std::vector<int> missingDays{};  // on which something stood
    int emptyDays{};                 // that cost something though nothing stood
    double emptyAmount{};
};

/// Each of `days` by the cuttings that stand on it.
[[nodiscard]] SharedOut shareOut(const Scope& scope, std::span<const std::vector<Stand>> stands, DaySpan days,
                                 const CostOfDay& costOf);

}  // namespace core
