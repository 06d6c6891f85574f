// SPDX-License-Identifier: MIT
#include "app/desktop/trials/trial_records.h"

#include "core/comparison/spread.h"
#include "db/logbook.h"

namespace desktop {

TrialRecords::TrialRecords(core::Shelves shelves, std::vector<core::BatchRecord> records)
    : shelves_(std::move(shelves)), batches_(std::move(records)) {}

std::shared_ptr<const TrialRecords> TrialRecords::read(const db::Logbook& logbook) {
    return std::make_shared<const TrialRecords>(logbook.shelves(), logbook.batchRecords());
}

const stats::PooledSpread& TrialRecords::spread() const {
    std::call_once(spreadKnown_, [this] {
        spread_ = core::pooledSpreadOf(batches_, shelves_.facts.horizonDay, shelves_.facts.level);
    });
    return spread_;
}

}  // namespace desktop
