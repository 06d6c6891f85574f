// SPDX-License-Identifier: MIT
// Which moments of an axis of hours, days or months deserve a tick, and what stands below it. Inside plot only.
#pragma once

#include <QString>
#include <vector>

#include "core/units/moment.h"

namespace plot {

struct TimeTick {
    core::Moment at{};
    QString text;
};

/// At local midnights and round hours, as close as `most` of them allow: every hour up to every ten years. Domain: from < to, most >= 1.
[[nodiscard]] std::vector<TimeTick> timeTicks(core::Moment from, core::Moment to, int most);

}  // namespace plot
