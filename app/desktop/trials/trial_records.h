// SPDX-License-Identifier: MIT
// What the sums about trials need, as it was when it was read: copies, to be worked on away from the window's thread.
#pragma once

#include <memory>
#include <mutex>
#include <vector>

#include "core/records.h"
#include "stats/overdispersion/intraclass_correlation.h"

namespace db {
class Logbook;
}

namespace desktop {

class TrialRecords {
  public:
    TrialRecords(core::Shelves shelves, std::vector<core::BatchRecord> records);

    /// For read_beside.h.
    [[nodiscard]] static std::shared_ptr<const TrialRecords> read(const db::Logbook& logbook);

    [[nodiscard]] const core::Shelves& shelves() const { return shelves_; }
    [[nodiscard]] const std::vector<core::BatchRecord>& batches() const { return batches_; }
    /// How much batches of this logbook differ; whoever asks first, in whatever thread, works it out.
    [[nodiscard]] const stats::PooledSpread& spread() const;

  private:
    core::Shelves shelves_;
    std::vector<core::BatchRecord> batches_;
    mutable std::once_flag spreadKnown_;
    mutable stats::PooledSpread spread_{};
};

}  // namespace desktop
