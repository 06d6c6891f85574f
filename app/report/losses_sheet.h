// SPDX-License-Identifier: MIT
// Losses on paper: what was lost to what, when and where, which batches are out of the ordinary, the chart of one plant by one method, and what
// went with rooting.
#pragma once

#include <QDateTime>
#include <memory>
#include <optional>

#include "app/report/losses_records.h"
#include "app/report/sheet.h"

namespace report {

struct LossesPaper {
    QString span;                        // as chosen: "this season (2026)"
    std::optional<ChartChoice> chart{};  // what chartWords and chartFigure are of; none: not printed
    QString chartWords{};
    std::shared_ptr<const plot::Figure> chartFigure{};
};

[[nodiscard]] Sheet lossesSheet(const LossesAnswer& answer, const LossesPaper& paper, const core::Shelves& shelves,
                                const QDateTime& printedAt);

/// Batch, plant, method, day, rooted, expected, how rare.
[[nodiscard]] Table unusualTable(const std::vector<core::UnusualBatch>& unusual, const core::Shelves& shelves);

}  // namespace report
