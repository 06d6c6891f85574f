// SPDX-License-Identifier: MIT
// The season review on paper: at most four pages whatever the logbook's size. The first page holds the answer and what to try next.
#pragma once

#include <QDateTime>

#include "app/report/sheet.h"
#include "core/review/season_review.h"

namespace report {

/// Needs a QGuiApplication, since it is measured on A4 and Letter. What doesn't find room is left out with a sentence.
[[nodiscard]] Sheet seasonReviewSheet(const core::SeasonReview& review, const core::Shelves& shelves,
                                      const QDateTime& printedAt);

}  // namespace report
