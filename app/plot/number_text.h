// SPDX-License-Identifier: MIT
// The one place that rounds for people. Numbers and dates follow QLocale(), without grouping; a real minus sign; a
// narrow no-break space before %; a percentage never without its count.
#pragma once

#include <QString>
#include <optional>

#include "core/comparison/comparison.h"
#include "core/units/days.h"

namespace plot {

[[nodiscard]] QString countText(int count);
[[nodiscard]] QString decimalText(double value, int decimals);  // "∞" when infinite
[[nodiscard]] QString amountText(double value);                 // three digits that count: "1000", "0.25"

[[nodiscard]] QString percentText(int part, int whole);  // "75 % (18 of 24)"; "none of 0" gives "nothing to count"
[[nodiscard]] QString percentText(double rate, int part, int whole);  // where the rate isn't part / whole exactly
[[nodiscard]] QString shareText(double share);                        // "75 %", only where the count stands beside it
[[nodiscard]] QString limitsText(const core::Limits& limits);         // "55 to 88 %"
[[nodiscard]] QString levelText(double level);                        // "95 %", "99.5 %"

[[nodiscard]] QString pointsText(double difference);                              // "+14", "0", "−3": of 100
[[nodiscard]] QString pointsText(double difference, const core::Limits& limits);  // "+14 (−3 to +30)"
[[nodiscard]] QString differenceText(double difference);  // "14 more of 100", "3 fewer of 100", "as many"
[[nodiscard]] QString differenceLimitsText(const core::Limits& limits);  // "3 fewer to 30 more"

[[nodiscard]] QString ratioText(const std::optional<double>& ratio);  // "1.42", "∞", "–" when undefined
[[nodiscard]] QString ratioText(const std::optional<double>& ratio, const core::Limits& limits);
[[nodiscard]] QString pText(double p);                 // "p = 0.034", "p < 0.001"
[[nodiscard]] QString chanceText(double probability);  // "92 in 100", "more than 99 in 100"

[[nodiscard]] QString dateText(core::Date date);       // "14 March 2026" or as the locale has it
[[nodiscard]] QString shortDateText(core::Date date);  // for columns: as the locale's short form, four digits of year
[[nodiscard]] QString dayText(double day);             // "day 21"
[[nodiscard]] QString dayRangeText(
    const core::DayRange& range);  // "day 8 to 14" for after 7, by 14; "by day 7" for after 0
[[nodiscard]] QString dayRangeText(const std::optional<core::DayRange>& range);  // "not reached"

// Nouns with their number, plural by %n.
[[nodiscard]] QString cuttingsText(int count);
[[nodiscard]] QString batchesText(int count);
[[nodiscard]] QString stationsText(int count);
[[nodiscard]] QString plantsText(int count);
[[nodiscard]] QString checksText(int count);
[[nodiscard]] QString daysText(int count);

}  // namespace plot
