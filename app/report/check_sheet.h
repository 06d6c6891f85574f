// SPDX-License-Identifier: MIT
// A round of checks on paper, for where no computer goes: what is due in walking order, station by station, with boxes for a pencil and the
// letters of the causes at the foot. What is written there is typed into a round afterwards.
#pragma once

#include <QDateTime>
#include <span>

#include "app/report/sheet.h"
#include "core/due/due_today.h"

namespace report {

/// `rows` in walking order, as core::dueOn() gives them. `day` is the day of the round.
[[nodiscard]] Sheet checkSheet(std::span<const core::DueBatch> rows, core::Date day, const core::Shelves& shelves,
                               const QDateTime& printedAt);

}  // namespace report
