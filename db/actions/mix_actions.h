// SPDX-License-Identifier: MIT
// Recipes kept as they were mixed: with a session, or with the care of a station. See session_actions.h for the manner.
#pragma once

#include "core/result.h"
#include "db/logbook.h"

namespace db {

/// With a session that is there; whatever the mix says of what it belongs to is set aside. Adds when its id is unset, else changes.
[[nodiscard]] core::Result<Changes> keepMix(Logbook& logbook, core::SessionId session, core::KeptMix mix,
                                            core::Moment now);
/// The entry of care and what was mixed for it in one step of history: care whose id is unset is new, else it is changed; the same
/// of the mix. A refusal of the mix begins with "Mix: ".
[[nodiscard]] core::Result<Changes> keepMixWithCare(Logbook& logbook, core::Care care, core::KeptMix mix,
                                                    core::Moment now);
[[nodiscard]] core::Result<Changes> remove(Logbook& logbook, core::KeptMixId id);

}  // namespace db
