// SPDX-License-Identifier: MIT
// What happens beside checks: readings and care of a station, photos and expenses of a batch. See session_actions.h for the manner.
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

[[nodiscard]] core::Result<Changes> keepExpense(Logbook& logbook, const core::Expense& expense, core::Date today);
[[nodiscard]] core::Result<Changes> deleteExpense(Logbook& logbook, const core::Expense& expense);

}  // namespace db
