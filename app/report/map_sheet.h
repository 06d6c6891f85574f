// SPDX-License-Identifier: MIT
// The map of a station on paper, or that of one batch: every position with what stands there, by shape and letter so that grey print and
// colour-blind eyes can read it, and the batches in a table.
#pragma once

#include <QDateTime>
#include <vector>

#include "app/plot/station_map.h"
#include "app/report/sheet.h"

namespace report {

/// Contract: the station has a layout. With `focus` the other batches are dimmed.
[[nodiscard]] Sheet mapSheet(const core::Station& station, const std::vector<core::BatchRecord>& records,
                             core::BatchId focus, const core::Shelves& shelves, const QDateTime& printedAt);

/// The map of one batch alone and what its signs mean, for its summary; nothing where the batch or its station has no positions.
[[nodiscard]] std::vector<Block> mapBlocks(const core::BatchRecord& record, const core::Shelves& shelves);

}  // namespace report
