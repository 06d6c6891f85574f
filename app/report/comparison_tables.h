// SPDX-License-Identifier: MIT
// The tables of figures on the head-to-head report. Inside report only.
#pragma once

#include <QString>

#include "app/report/sheet.h"
#include "core/comparison/comparison.h"

namespace report {

/// Domain: the pair has a difference. `first` and `second` are the names of its arms.
[[nodiscard]] Table figuresOf(const core::Pair& pair, const QString& first, const QString& second, bool isOneOfSeveral);
[[nodiscard]] Table trendTable(const core::DoseSeries& series);

}  // namespace report
