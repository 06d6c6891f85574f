// SPDX-License-Identifier: MIT
// Phrases that several figures share. Inside plot only.
#pragma once

#include <QString>

#include "core/comparison/comparison.h"

namespace plot {

[[nodiscard]] QString textOf(const std::string& text);
/// With a capital, for the beginning of a sentence.
[[nodiscard]] QString capitalised(const QString& words);
[[nodiscard]] QString nameOf(const core::Arm& arm);
/// "75 % (18 of 24)" of those assessed at the horizon, or "nothing assessed".
[[nodiscard]] QString rateText(const core::Arm& arm);
/// The pair, or nullptr where there is none of that index or it points at no arms.
[[nodiscard]] const core::Pair* pairAt(const core::Comparison& comparison, int pair);
/// Why there is no pair to show: a sentence for the empty figure.
[[nodiscard]] QString nothingToCompare(const core::Comparison& comparison);

}  // namespace plot
