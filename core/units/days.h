// SPDX-License-Identifier: MIT
// Calendar days: the one place that reads and writes ISO 8601 dates and counts days between them. No clock in here; today is
// always an argument.
#pragma once

#include <chrono>
#include <optional>
#include <string>
#include <string_view>

namespace core {

using Date = std::chrono::year_month_day;

/// "2026-03-14" exactly (RFC 3339 full-date, years 1800 to 9999); anything else, or a day that no calendar has, gives nothing.
[[nodiscard]] std::optional<Date> dateFromIso(std::string_view text);
[[nodiscard]] std::string isoText(Date date);
/// Days from `first` to `second`; negative when `second` is earlier.
[[nodiscard]] int daysBetween(Date first, Date second);
[[nodiscard]] Date addDays(Date date, int days);

}  // namespace core
