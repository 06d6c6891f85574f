// SPDX-License-Identifier: MIT
// What a batch cost, in a sentence: in all, and for each cutting that rooted.
#pragma once

#include <QString>
#include <string>
#include <vector>

#include "core/batch/tally.h"
#include "core/money/expense.h"

namespace report {

/// "12.50 EUR in all, 0.69 EUR for each of 18 rooted so far"; empty where nothing was written down.
[[nodiscard]] QString costsInWords(const std::vector<core::Expense>& expenses, const core::Tally& tally,
                                   const std::string& currency);
/// What is not in it.
[[nodiscard]] QString costsLeftOut();

}  // namespace report
