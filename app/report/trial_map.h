// SPDX-License-Identifier: MIT
// Where each cutting of a trial goes: the positions that were dealt, station by station, as a map with the number of its arm at each place.
// For the bench, on the screen and on paper.
#pragma once

#include <QDateTime>
#include <memory>
#include <vector>

#include "app/report/sheet.h"
#include "core/records.h"
#include "core/trial/trial_progress.h"

namespace report {

/// Stations of one session of a trial, in walking order.
[[nodiscard]] std::vector<core::Station> stationsOf(const core::Trial& trial, int session,
                                                    const core::Shelves& shelves);
/// Where the station's layout isn't described the picture says so, and its table has the counts.
[[nodiscard]] std::shared_ptr<const plot::Figure> trialMapFigure(const core::Trial& trial, int session,
                                                                 const core::Station& station,
                                                                 const core::Shelves& shelves);

/// What was dealt, a line for each batch. While arms are not told, those of batches that are stuck are left out.
[[nodiscard]] Table dealtTable(const core::Trial& trial, bool isTold, const core::Shelves& shelves);

/// Every session that is not stuck yet, and the others too where arms are told.
[[nodiscard]] Sheet trialMapSheet(const core::Trial& trial, const core::TrialProgress& progress,
                                  const core::Shelves& shelves, const QDateTime& printedAt);

}  // namespace report
