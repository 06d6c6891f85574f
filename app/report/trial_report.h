// SPDX-License-Identifier: MIT
// A trial on one page: what was asked and planned, what was dealt, how far it is or what came of it, what was changed after somebody had
// looked, what it does not show, and what to try next.
#pragma once

#include <QDateTime>

#include "app/report/sheet.h"
#include "core/records.h"
#include "core/trial/trial_progress.h"

namespace report {

/// `result`: nullptr before the horizon of the batch stuck last.
[[nodiscard]] Sheet trialReport(const core::Trial& trial, const core::TrialProgress& progress,
                                const core::Comparison* result, const core::Shelves& shelves,
                                const QDateTime& printedAt);

}  // namespace report
