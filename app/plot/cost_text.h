// SPDX-License-Identifier: MIT
// Costs for people: amounts that were shared out, rounded only here, and the names of their parts.
#pragma once

#include <QString>
#include <string>

#include "core/money/worth.h"

namespace plot {

/// "0.42"; below a tenth two figures that count: "0.0043"; "∞" when infinite.
[[nodiscard]] QString costAmount(double amount);
[[nodiscard]] QString costText(double amount, const std::string& currency);  // "0.42 EUR"
[[nodiscard]] QString costLimitsText(const core::Limits& limits);            // "0.34 to 0.61"; "0.34 or more"
[[nodiscard]] QString costOfEachText(const core::CostOfEach& cost);          // "0.42 (0.34 to 0.61)"
[[nodiscard]] QString noneSucceededText(const core::CostOfEach& cost,
                                        const QString& none);  // "none rooted; at least 3.20"
[[nodiscard]] QString costPartText(core::CostPart part);       // "lasting things"

}  // namespace plot
