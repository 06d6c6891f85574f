// SPDX-License-Identifier: MIT
// Two spellings of one thing become one: what names the first is made to name the second, and the first goes. One step of history.
#pragma once

#include "core/result.h"
#include "db/logbook.h"

namespace db {

/// Its stock plants come along; two of one label become one.
[[nodiscard]] core::Result<Changes> mergePlants(Logbook& logbook, core::PlantId goes, core::PlantId stays);
/// Refused unless both are of one plant.
[[nodiscard]] core::Result<Changes> mergeStockPlants(Logbook& logbook, core::StockPlantId goes,
                                                     core::StockPlantId stays);
/// With readings and care. Refused unless both have one method, and while a batch would stand where the other has no room for it.
[[nodiscard]] core::Result<Changes> mergeStations(Logbook& logbook, core::StationId goes, core::StationId stays);
[[nodiscard]] core::Result<Changes> mergeMedia(Logbook& logbook, core::MediumId goes, core::MediumId stays);
[[nodiscard]] core::Result<Changes> mergeTreatments(Logbook& logbook, core::TreatmentId goes, core::TreatmentId stays);
[[nodiscard]] core::Result<Changes> mergeCuttingKinds(Logbook& logbook, core::CuttingKindId goes,
                                                      core::CuttingKindId stays);
[[nodiscard]] core::Result<Changes> mergeLossCauses(Logbook& logbook, core::LossCauseId goes, core::LossCauseId stays);

}  // namespace db
