// SPDX-License-Identifier: MIT
// What the Climate page offers to choose from, of plain records.
#pragma once

#include <span>
#include <vector>

#include "app/desktop/climate/climate_model.h"

namespace desktop {

/// Those in use, in walking order.
[[nodiscard]] std::vector<StationChoice> stationChoices(const core::Shelves& shelves);
/// What stands at a station, newest first; where nothing does, what stood there last.
[[nodiscard]] std::vector<const core::BatchLine*> batchesAt(core::StationId station,
                                                            std::span<const core::BatchLine> lines);
[[nodiscard]] std::vector<SpanChoice> spanChoices(std::span<const core::BatchLine* const> batches,
                                                  const core::Shelves& shelves);
/// Batches first, then each stage in general.
[[nodiscard]] std::vector<BandsChoice> bandsChoices(std::span<const core::BatchLine* const> batches,
                                                    const core::Shelves& shelves);
/// "newest 0.62 mS/cm, 3 hours ago; 12 h of 71 h outside its band; ...", the bands on a line of their own.
[[nodiscard]] QString wordsOn(const plot::ClimateChart& chart, core::Moment now);

}  // namespace desktop
