// SPDX-License-Identifier: MIT
// The head-to-head report. Its first page holds the answer.
#pragma once

#include <QDateTime>

#include "app/report/sheet.h"
#include "core/comparison/comparison.h"
#include "core/records.h"

namespace report {

[[nodiscard]] Sheet comparisonSheet(const core::Comparison& comparison, const core::Shelves& shelves,
                                    const QDateTime& printedAt);

}  // namespace report
