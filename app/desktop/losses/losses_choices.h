// SPDX-License-Identifier: MIT
// What the Losses page offers to choose from, of plain records.
#pragma once

#include <QString>
#include <optional>
#include <vector>

#include "core/records.h"

namespace desktop {

enum class LossesSpan { ThisSeason, LastYear, All };

struct LossesSpanChoice {
    LossesSpan span{};
    QString name;  // "this season (2026)"
};

struct LossesPlantChoice {
    core::PlantId plant{};  // unset: all
    QString name;
};

struct LossesMethodChoice {
    core::MethodId method{};  // unset: all
    QString name;
};

[[nodiscard]] std::vector<LossesSpanChoice> lossesSpans(core::Date today);
/// The first day of the span; unset: from the first record on. A season is a calendar year.
[[nodiscard]] std::optional<core::Date> firstDayOf(LossesSpan span, core::Date today);

/// Those that have batches, all of them together first.
[[nodiscard]] std::vector<LossesPlantChoice> plantsWithBatches(const core::Shelves& shelves,
                                                               const std::vector<core::BatchLine>& lines);
[[nodiscard]] std::vector<LossesMethodChoice> methodsWithBatches(const core::Shelves& shelves,
                                                                 const std::vector<core::BatchLine>& lines);

}  // namespace desktop
