// SPDX-License-Identifier: MIT
// How many batches use each thing on a shelf, and the last day of any of them. Counted over the lines that the workspace keeps, so that it
// stays quick with 20,000 batches.
#pragma once

#include "app/desktop/shelves/shelf.h"

namespace desktop {

/// One batch more that uses `id`; an unset one counts for nothing.
void countUse(ShelfUses& uses, std::int64_t id, const core::BatchLine& line);

template <class ThingId>
[[nodiscard]] ShelfUses usesOf(const std::vector<core::BatchLine>& lines, ThingId core::Batch::*which) {
    ShelfUses uses;
    for (const core::BatchLine& line : lines) countUse(uses, (line.batch.*which).value, line);
    return uses;
}

[[nodiscard]] ShelfUses usesOfLossCauses(const Workspace& workspace);
/// Of the schedules that hold for each batch: its plant's, else its method's.
[[nodiscard]] ShelfUses usesOfCheckSchedules(const Workspace& workspace);

}  // namespace desktop
