// SPDX-License-Identifier: MIT
// The lines of all batches, read once and kept, in the order that the logbook gives them. Told what changed, they read only that. What a
// workspace keeps for all its pages, so that each shows 20,000 batches without a query of its own.
#pragma once

#include <optional>
#include <unordered_set>
#include <vector>

#include "db/logbook.h"

namespace desktop {

class KeptLines {
  public:
    /// As the logbook has them now. Throws db::LogbookError when that can't be read.
    [[nodiscard]] const std::vector<core::BatchLine>& of(const db::Logbook& logbook);
    /// An action touched these; they are read when somebody asks next.
    void touch(const std::vector<core::BatchId>& batches);
    void forget();

  private:
    void bringUpToDate(const db::Logbook& logbook);

    std::optional<std::vector<core::BatchLine>> lines_;
    std::unordered_set<core::BatchId> touched_;
};

}  // namespace desktop
