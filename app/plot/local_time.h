// SPDX-License-Identifier: MIT
// Moments are stored in UTC; people read and type the day and the hour of the place where they are.
#pragma once

#include <QString>

#include "core/units/days.h"
#include "core/units/moment.h"

namespace plot {

[[nodiscard]] core::Date localDay(core::Moment moment);
/// Minutes since midnight.
[[nodiscard]] int localMinute(core::Moment moment);
[[nodiscard]] core::Moment momentOf(core::Date day, int minute);
/// Days since the beginning of `start`, with the hour as a fraction.
[[nodiscard]] double daysSince(core::Date start, core::Moment moment);

[[nodiscard]] QString timeText(core::Moment moment);    // "10:42"
[[nodiscard]] QString momentText(core::Moment moment);  // "14 March 2026, 10:42"

}  // namespace plot
