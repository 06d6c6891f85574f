// SPDX-License-Identifier: MIT
// Days to one event known only between checks, nothing competing with it.
#pragma once

#include <span>
#include <stop_token>

#include "stats/time_to_event/competing_risks_npmle.h"

namespace stats {

/// Turnbull's estimate: competingRisksNpmle() with a single cause. cause2 of the answer is empty.
///
/// Where something competes with the event (cuttings are lost), leaving it out or calling it censored overstates the
/// curve: use competingRisksNpmle().
///
/// Domain    as requireObservations(), and no cause 2; else std::domain_error.
/// Source    Turnbull (1976), J. R. Stat. Soc. B 38, 290-295; Peto (1973), Appl. Stat. 22, 86-91.
[[nodiscard]] CumulativeIncidence turnbull(std::span<const Observation> observations, std::stop_token stop = {});

}  // namespace stats
