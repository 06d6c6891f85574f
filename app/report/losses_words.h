// SPDX-License-Identifier: MIT
// What is said of losses and suspects beside the figures: the same words on the page, on paper and at the command line.
#pragma once

#include <QString>
#include <optional>

#include "app/report/losses_records.h"

namespace report {

/// "1 March 2026 to 26 November 2026"; "all records" where neither end is set.
[[nodiscard]] QString spanText(std::optional<core::Date> from, std::optional<core::Date> until);
/// What is covered, n first: "58 of 1240 cuttings that stood were found lost, in 12 of 60 batches, ..."
[[nodiscard]] QString coveredText(const core::Losses& losses);

/// "3 of 24 by day 28".
[[nodiscard]] QString rootedText(const core::AgainstThePast& against);
/// What the list is and how often luck alone brings a batch onto it.
[[nodiscard]] QString unusualText(const LossesAnswer& answer, double falseAlarmRate);

/// "Hebe albicans, media tray (14 batches)".
[[nodiscard]] QString chartName(const ChartChoice& choice, const core::Shelves& shelves);
/// What the chart says, whether the rate has turned, and that the span isn't asked.
[[nodiscard]] QString chartText(const BatchChart& chart, int batches);

/// With what could not be told and what was not looked at.
[[nodiscard]] QString goesWithText(const core::GoesWith& answer);

[[nodiscard]] QString kindText(core::SuspectKind kind);
/// How many batches and cuttings share it. How the others of them did is among what speaks for it or against it.
[[nodiscard]] QString sharedText(const core::Suspect& suspect);
/// The verdict about a batch against its past; empty where there is none.
[[nodiscard]] QString againstText(const core::Suspects& suspects);

}  // namespace report
