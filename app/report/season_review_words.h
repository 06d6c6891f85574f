// SPDX-License-Identifier: MIT
// Tables and sentences of the season review. Inside report only, but for the span's name, which the window and the command line say too.
#pragma once

#include <QString>
#include <vector>

#include "app/report/sheet.h"
#include "core/review/season_review.h"

namespace report {

/// "2026" for a whole year, else "1 March 2026 to 31 May 2026".
[[nodiscard]] QString spanText(core::Date from, core::Date until);
/// What was stuck in each month or year and what became of it, and all together.
[[nodiscard]] Table reviewMonthsTable(const core::SeasonReview& review);
/// Which method has the highest rate with each of so many plants, and how sure that is.
[[nodiscard]] Table bestMethodsTable(const std::vector<core::PlantInReview>& plants, std::size_t most);
[[nodiscard]] QString howSureText(core::HowSure sure);
[[nodiscard]] Table unusualTable(const core::SeasonReview& review, const core::Shelves& shelves, std::size_t most);
/// Batches that are in the sums but in no rate, a sentence for each reason.
[[nodiscard]] QStringList leftOutOfRates(const core::SeasonReview& review);
/// By part; parts that cost nothing are left out.
[[nodiscard]] Table spentTable(const core::ReviewMoney& money, const std::string& currency);
/// "4 more are left out here."; empty where none is.
[[nodiscard]] QString notPrintedText(std::size_t shown, std::size_t all);

}  // namespace report
