// SPDX-License-Identifier: MIT
// "Worth it" on paper: the verdict, what would turn it, the figures of the methods, by plant, what stood empty and what the prices don't hold.
#pragma once

#include <QDateTime>
#include <vector>

#include "app/report/sheet.h"
#include "core/money/pay_off.h"
#include "core/money/worth_it.h"

namespace report {

/// `pair`: which of the pairs the sheet is about; where there is none of that index it is about the methods alone. `payOff` is its
/// payOffCurve().
[[nodiscard]] Sheet worthSheet(const core::Worth& worth, int pair, const std::vector<core::ChanceAfter>& payOff,
                               const core::Shelves& shelves, const QDateTime& printedAt);

}  // namespace report
