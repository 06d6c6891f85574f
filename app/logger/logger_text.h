// SPDX-License-Identifier: MIT
// What is read from logger files, in words for people.
#pragma once

#include <QString>

#include "app/logger/log_reader.h"

namespace logger {

/// "°C", "µS/cm", "ppm (500 scale)", "µmol/m²/s", "lux"; empty for pH.
[[nodiscard]] QString unitText(core::LoggerUnit unit);
/// "day, month, year": the order in which they stand.
[[nodiscard]] QString timeFormText(core::TimeForm form);
/// "31.12.2026 23:59": how a time of that form may look.
[[nodiscard]] QString timeExample(core::TimeForm form, core::ColumnRole role);
/// "10 minutes", "1 hour", "2 days 3 hours": two units at most.
[[nodiscard]] QString durationText(std::chrono::seconds duration);
/// "From 3 June 2026, 10:00 to 4 June 2026, 12:30, 1 day 2 hours": by the clock of this place.
[[nodiscard]] QString gapText(const LogGap& gap);
/// "1,440 rows from 1 June 2026, 00:00 to 10 June 2026, 23:50, every 10 minutes; 2 gaps."
[[nodiscard]] QString summaryText(const LogSummary& summary);
/// "air temperature and relative humidity of Tent 1", one a station.
[[nodiscard]] QString targetText(const core::LoggerMapping& mapping, const core::Shelves& shelves);

/// "2026 rows", "1 value": plural by %n.
[[nodiscard]] QString rowsText(std::int64_t rows);
[[nodiscard]] QString valuesText(std::int64_t values);

}  // namespace logger
