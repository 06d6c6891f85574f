// SPDX-License-Identifier: MIT
// The counts of a check sorted by what was found, for a look that fills in where.
#pragma once

#include <map>
#include <utility>

#include "core/batch/check.h"

namespace desktop {

/// Rooted, withdrawn, or lost to one cause.
using Sort = std::pair<core::Outcome, core::LossCauseId>;

[[nodiscard]] Sort sortOf(const core::Finding& finding);
/// What the check counts without saying where.
[[nodiscard]] std::map<Sort, int> unplacedIn(const core::Check& check);
/// Causes stay in the order in which the check had them, so that a check that says the same stays the same.
void setCounts(core::Check& check, const std::map<Sort, int>& counts);
/// What a check counts when `kept` findings stay, `fresh` ones come, and `unplaced` were counted without saying where: those are filled
/// first, and one whose cause wasn't known also by a loss whose cause is.
[[nodiscard]] std::map<Sort, int> countsWith(std::map<Sort, int> kept, const std::map<Sort, int>& fresh,
                                             std::map<Sort, int> unplaced);

}  // namespace desktop
