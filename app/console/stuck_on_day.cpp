// SPDX-License-Identifier: MIT
#include "app/console/stuck_on_day.h"

#include "app/console/words.h"
#include "app/plot/number_text.h"

namespace console {

std::vector<core::Batch> batchesStuckOn(core::Date day, const db::Logbook& logbook) {
    std::vector<core::Batch> batches;
    for (const core::BatchLine& line : logbook.batchLines())
        if (line.batch.stuckOn == day) batches.push_back(line.batch);
    return batches;
}

std::string nothingStuckText(core::Date day, const std::string& file) {
    return filled(tr("Nothing was stuck on %1 in %2."), {plot::dateText(day).toStdString(), file});
}

}  // namespace console
