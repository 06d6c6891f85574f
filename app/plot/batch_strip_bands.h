// SPDX-License-Identifier: MIT
// The bands of a batch's stages as its strip draws them. Inside plot only.
#pragma once

#include <QString>
#include <vector>

#include "app/plot/batch_strip_picture.h"
#include "core/climate/reading.h"
#include "core/climate/stage_bands.h"

namespace plot {

/// "good: up to 0.50, then 0.50 to 1.00"; empty where there is none.
[[nodiscard]] QString goodBandsText(const std::vector<core::BandFrom>& bands, core::Quantity quantity,
                                    const core::DisplayUnits& units);
/// In the grower's unit. An end that no meter shows is drawn where the readings end.
[[nodiscard]] std::vector<StripBand> stripBands(const std::vector<core::BandFrom>& bands,
                                                const std::vector<const core::Reading*>& readings, core::Date stuckOn,
                                                int lastDay, const core::DisplayUnits& units);

}  // namespace plot
