// SPDX-License-Identifier: MIT
// What happens beside checks: readings and care of a station, photos, expenses and counts after potting of a
// batch, expenses of a session. See session_actions.h for the manner.
#pragma once

#include <vector>

#include "core/result.h"
#include "db/logbook.h"

namespace db {

// Several at once are one step of history; ids unset: new. Each is refused as a whole with every reason.
[[nodiscard]] core::Result<Changes> recordReadings(Logbook& logbook, const std::vector<core::Reading>& readings,
                                                   core::Moment now);
[[nodiscard]] core::Result<Changes> changeReading(Logbook& logbook, const core::Reading& reading, core::Moment now);
[[nodiscard]] core::Result<Changes> deleteReading(Logbook& logbook, const core::Reading& reading);

[[nodiscard]] core::Result<Changes> recordCare(Logbook& logbook, const std::vector<core::Care>& care, core::Moment now);
[[nodiscard]] core::Result<Changes> changeCare(Logbook& logbook, const core::Care& care, core::Moment now);
[[nodiscard]] core::Result<Changes> deleteCare(Logbook& logbook, const core::Care& care);

[[nodiscard]] core::Result<Changes> addPhotos(Logbook& logbook, std::vector<core::PhotoRecord> photos,
                                              core::Date today);
/// Its day and caption.
[[nodiscard]] core::Result<Changes> changePhoto(Logbook& logbook, const core::Photo& photo, core::Date today);
[[nodiscard]] core::Result<Changes> deletePhoto(Logbook& logbook, const core::Photo& photo);

/// Of a batch or of a session; adds when the id is unset, else changes.
[[nodiscard]] core::Result<Changes> keepExpense(Logbook& logbook, const core::Expense& expense, core::Date today);
[[nodiscard]] core::Result<Changes> deleteExpense(Logbook& logbook, const core::Expense& expense);

[[nodiscard]] core::Result<Changes> keepPotting(Logbook& logbook, const core::Potting& potting, core::Date today);
/// Refused where more would have been lost after potting than were potted.
[[nodiscard]] core::Result<Changes> deletePotting(Logbook& logbook, const core::Potting& potting);

}  // namespace db
