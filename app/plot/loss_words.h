// SPDX-License-Identifier: MIT
// Phrases that the figures of losses and what is said beside them share.
#pragma once

#include <QString>
#include <string>

#include "core/causes/losses.h"

namespace plot {

/// The cause as the logbook names it; "cause not known" where none was given.
[[nodiscard]] QString lossCauseText(core::LossCauseId cause, const std::string& name);
[[nodiscard]] QString lossStationText(const core::StationOfLosses& station);
/// Why there is no loss to show.
[[nodiscard]] QString nothingLostText(const core::Losses& losses);
/// "March 2026", and in little room "Mar 26".
[[nodiscard]] QString monthText(std::chrono::year_month month);
[[nodiscard]] QString shortMonthText(std::chrono::year_month month);
/// "19 % (23 of 121)" lost of those that stood.
[[nodiscard]] QString lossRateText(const core::LossCount& count);

}  // namespace plot
