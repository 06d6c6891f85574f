// SPDX-License-Identifier: MIT
// What an entry of a round means, in words, in the reading that the grower prefers with the other one beside it.
#pragma once

#include <QString>
#include <span>

#include "core/batch/check_entry.h"
#include "core/batch/tally.h"

namespace desktop {

/// "12 rooted (+3), 1 lost (rotted), 11 undecided"; with new counts first "3 rooted (12 in all), ...".
[[nodiscard]] QString meaningText(const core::CheckEntry& entry, const core::Tally& before,
                                  std::span<const core::LossCause> causes, core::PlainNumber plain);

/// One count in a column: "12 (+3)" in all with what is new beside it, or "+3 (12)"; "9" or "(9)" where nothing is new.
[[nodiscard]] QString countCell(int before, int isNew, core::PlainNumber plain);

}  // namespace desktop
