// SPDX-License-Identifier: MIT
// A look hole by hole. See session_actions.h for the manner.
#pragma once

#include <vector>

#include "core/result.h"
#include "db/logbook.h"

namespace db {

/// All of it or nothing, one step of history: checks with an id are changed, those without are added, of one batch or of several. Each is
/// judged with the others as they are to become; a refusal's field is prefixed with the batch's code where there are several.
[[nodiscard]] core::Result<Changes> recordLook(Logbook& logbook, const std::vector<core::Check>& checks,
                                               core::Date today);

}  // namespace db
