// SPDX-License-Identifier: MIT
// What happened around a batch, for its summary: the strip, care, two photos, expenses.
#pragma once

#include <optional>
#include <vector>

#include "app/plot/batch_life.h"
#include "app/plot/batch_strip_photos.h"
#include "app/report/batch_costs.h"
#include "app/report/sheet.h"
#include "core/climate/lived_through.h"
#include "core/comparison/batch_summary.h"

namespace report {

struct BatchEvents {
    plot::BatchLife life;
    std::vector<plot::ShownPhoto> photos;  // the first and the last
    std::vector<core::LivedQuantity> lived{};
    std::optional<WholeCost> cost{};  // of the batch, its share of what batches have in common included

    /// But for what it cost: that is a few lines.
    [[nodiscard]] bool isEmpty() const;
};

[[nodiscard]] BatchEvents batchEventsOf(const db::Logbook& logbook, const core::BatchRecord& record,
                                        const core::Shelves& shelves, core::Date today, core::Moment now);
/// A photo of the logbook as figures show it; an empty picture where it can't be read. No wider or higher than `most` pixels.
[[nodiscard]] plot::ShownPhoto shownPhoto(const db::Logbook& logbook, const core::Photo& photo, core::Date stuckOn,
                                          int most);

/// Headings included; nothing where nothing happened.
[[nodiscard]] std::vector<Block> eventBlocks(const BatchEvents& events, const core::BatchSummary& summary,
                                             const core::Batch& batch, const core::Shelves& shelves);

}  // namespace report
