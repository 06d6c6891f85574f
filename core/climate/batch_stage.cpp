// SPDX-License-Identifier: MIT
#include "core/climate/batch_stage.h"

namespace core {

Stage stageOf(const Batch& batch, const Tally& tally) {
    if (tally.rooted == 0) return Stage::BeforeRoots;
    if (isClosed(batch, tally)) return Stage::Hardening;
    return 2 * tally.rooted >= tally.stuck ? Stage::FillingRoots : Stage::FirstRoots;
}

Stage stageOn(const BatchRecord& record, Date day) {
    Batch then = record.batch;
    if (then.closedOn && *then.closedOn > day) then.closedOn.reset();
    return stageOf(then, tallyOf(then, record.checks, day));
}

std::vector<StageFrom> stagesOf(const BatchRecord& record) {
    std::vector<StageFrom> stages{{.from = record.batch.stuckOn, .stage = stageOn(record, record.batch.stuckOn)}};
    const auto look = [&](Date day) {
        const Stage stage = stageOn(record, day);
        if (stage == stages.back().stage || day <= stages.back().from) return;
        stages.push_back({.from = day, .stage = stage});
    };
    bool isClosedSeen = !record.batch.closedOn;
    for (const Check& check : record.checks) {
        if (!isClosedSeen && *record.batch.closedOn <= check.checkedOn) {
            look(*record.batch.closedOn);
            isClosedSeen = true;
        }
        look(check.checkedOn);
    }
    if (!isClosedSeen) look(*record.batch.closedOn);
    return stages;
}

}  // namespace core
