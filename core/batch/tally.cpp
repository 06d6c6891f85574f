// SPDX-License-Identifier: MIT
#include "core/batch/tally.h"

#include "core/batch/count_sum.h"

namespace core {

Tally tallyOf(const Batch& batch, std::span<const Check> checks, std::optional<Date> untilDay) {
    Tally tally;
    tally.stuck = batch.stuck;
    for (const Check& check : checks) {
        if (untilDay && check.checkedOn > *untilDay) continue;
        tally.rooted = countSum(tally.rooted, check.rooted);
        tally.lost = countSum(tally.lost, check.lost());
        tally.withdrawn = countSum(tally.withdrawn, check.withdrawn);
        if (!tally.lastCheckedOn || *tally.lastCheckedOn < check.checkedOn) tally.lastCheckedOn = check.checkedOn;
    }
    return tally;
}

bool isClosed(const Batch& batch, const Tally& tally) {
    return batch.closedOn.has_value() || tally.undecided() <= 0;
}

}  // namespace core
