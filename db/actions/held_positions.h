// SPDX-License-Identifier: MIT
// Where the cuttings of open batches stand, read once for each station. For use within one action.
#pragma once

#include <map>
#include <utility>
#include <vector>

#include "core/batch/position_rules.h"
#include "core/result.h"
#include "db/logbook.h"

namespace db {

class HeldPositions {
  public:
    explicit HeldPositions(const Logbook& logbook) : logbook_(logbook) {}

    /// Every fault of where this batch stands, with what others hold at its station.
    [[nodiscard]] core::Refusals faultsIn(const core::BatchRecord& record, const core::Shelves& shelves);
    /// A batch of this action, which the logbook need not have yet.
    void add(const core::BatchRecord& record);

  private:
    using AtStation = std::map<core::BatchId, std::vector<core::HeldPosition>>;
    AtStation& at(core::StationId station);

    const Logbook& logbook_;
    std::map<core::StationId, AtStation> stations_;
};

}  // namespace db
