// SPDX-License-Identifier: MIT
#include "app/desktop/shelves/shelf_uses.h"

#include <algorithm>
#include <map>
#include <utility>

#include "app/desktop/workspace.h"
#include "core/due/due_today.h"

namespace desktop {

void countUse(ShelfUses& uses, std::int64_t id, const core::BatchLine& line) {
    if (id == 0) return;
    ShelfUse& use = uses[id];
    ++use.batches;
    const core::Date last = std::max(line.batch.stuckOn, line.tally.lastCheckedOn.value_or(line.batch.stuckOn));
    if (!use.lastDay || *use.lastDay < last) use.lastDay = last;
}

ShelfUses usesOfLossCauses(const Workspace& workspace) {
    ShelfUses uses;
    for (const core::LossCauseUse& use : workspace.logbook().lossCauseUses())
        uses[use.cause.value] = {.batches = use.batches, .lastDay = use.lastDay};
    return uses;
}

ShelfUses usesOfCheckSchedules(const Workspace& workspace) {
    const core::Shelves& shelves = workspace.shelves();
    std::map<std::pair<core::PlantId, core::MethodId>, core::CheckScheduleId> known;
    ShelfUses uses;
    for (const core::BatchLine& line : workspace.batchLines()) {
        const auto [found, isNew] = known.try_emplace(std::pair(line.batch.plant, line.batch.method));
        if (isNew) found->second = core::scheduleFor(line.batch.plant, line.batch.method, shelves).id;
        countUse(uses, found->second.value, line);
    }
    return uses;
}

}  // namespace desktop
