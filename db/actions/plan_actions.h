// SPDX-License-Identifier: MIT
// Edits of plans. See session_actions.h for the manner.
#pragma once

#include "core/result.h"
#include "db/logbook.h"

namespace db {

/// Adds when the id is unset, else changes.
[[nodiscard]] core::Result<Changes> keep(Logbook& logbook, const core::Plan& plan);
[[nodiscard]] core::Result<Changes> remove(Logbook& logbook, core::PlanId id);

}  // namespace db
