// SPDX-License-Identifier: MIT
// What a band of the grower's own must obey: figures that a meter can show, the low no higher than the high, one of each stage,
// quantity and plant.
#pragma once

#include "core/climate/own_band.h"
#include "core/records.h"
#include "core/result.h"

namespace core {

/// It may be on the shelves already, under its id.
[[nodiscard]] Refusals faultsIn(const OwnBand& band, const Shelves& shelves);
/// The one of this stage, quantity and plant (unset: the general one), or nullptr.
[[nodiscard]] const OwnBand* ownBandOf(const Shelves& shelves, Stage stage, BandQuantity quantity, PlantId plant);

}  // namespace core
