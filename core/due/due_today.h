// SPDX-License-Identifier: MIT
// Which batches want a look. A batch is due when it is open and has not been looked at for the logbook's interval (the first look
// comes after `firstCheckAfterDays`).
#pragma once

#include <span>
#include <vector>

#include "core/records.h"

namespace core {

struct DueBatch {
    BatchLine line;
    Date dueOn{};
    int daysOverdue{};  // 0 = due today

    bool operator==(const DueBatch&) const = default;
};

[[nodiscard]] Date nextCheckOn(const BatchLine& line, const LogbookFacts& facts);

/// In walking order: station by station (those without a station last), then by code.
[[nodiscard]] std::vector<DueBatch> dueOn(Date today, std::span<const BatchLine> lines, const Shelves& shelves);

}  // namespace core
