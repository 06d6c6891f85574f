// SPDX-License-Identifier: MIT
// Which batches want a look. A batch is due when it is open and has not been looked at for as long as its schedule says: its plant's, else
// its method's, else the logbook's.
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

/// The schedule that holds for a batch of this plant and method; the logbook's own has no id and no name.
[[nodiscard]] CheckSchedule scheduleFor(PlantId plant, MethodId method, const Shelves& shelves);
[[nodiscard]] Date nextCheckOn(const BatchLine& line, const Shelves& shelves);

/// In walking order: station by station (those without a station last), then by code.
[[nodiscard]] std::vector<DueBatch> dueOn(Date today, std::span<const BatchLine> lines, const Shelves& shelves);

}  // namespace core
