// SPDX-License-Identifier: MIT
// The batch summary: what was stuck, where, how, by whom; each check; the strike rate with its interval; the curve; losses by cause; the
// grower's own past; where they stood; what happened around it; cautions; how it was worked out; a line to sign. On one page where nothing
// happened beside the checks and nobody recorded positions.
#pragma once

#include <QDateTime>

#include "app/report/batch_summary_events.h"
#include "app/report/sheet.h"
#include "core/comparison/batch_summary.h"
#include "core/records.h"

namespace report {

[[nodiscard]] Sheet batchSummarySheet(const core::BatchRecord& record, const core::Session& session,
                                      const core::BatchSummary& summary, const core::Shelves& shelves,
                                      const QDateTime& printedAt, const BatchEvents& events = {});

}  // namespace report
