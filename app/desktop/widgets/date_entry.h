// SPDX-License-Identifier: MIT
// Reads a day as a person at the bench types it, all relative to today:
//   14 (the 14th, the latest that is not after today)   14.3  14/3  14.3.26 (day and month in the order of the locale;
//   latest not after today) 2026-03-14   -3 (three days ago)   t (today)   y (yesterday)
// For days to come (DayLean::Ahead) 14 and 14.3 are the next ones from today on, and +21 is in 21 days.
// Anything else gives nothing: a wrong guess would move a batch by a year.
#pragma once

#include <QLocale>
#include <QString>
#include <optional>

#include "core/units/days.h"

namespace desktop {

enum class DayLean { Back, Ahead };

[[nodiscard]] std::optional<core::Date> dateFrom(const QString& typed, core::Date today, const QLocale& locale = {},
                                                 DayLean lean = DayLean::Back);

}  // namespace desktop
