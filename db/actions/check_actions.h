// SPDX-License-Identifier: MIT
// Edits of checks. See session_actions.h for the manner.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/result.h"
#include "db/logbook.h"

namespace db {

struct CheckDraft {
    core::Check check;        // id unset: new
    bool closesBatch{};       // nothing left to wait for: close the batch on the check's day
    std::string closeReason;  // used with closesBatch
};

/// A whole round, or one look: all of it or nothing, one step of history. A refusal's field is prefixed with the batch's code.
[[nodiscard]] core::Result<Changes> recordChecks(Logbook& logbook, const std::vector<CheckDraft>& checks,
                                                 core::Date today);
[[nodiscard]] core::Result<Changes> changeCheck(Logbook& logbook, const core::Check& check, core::Date today);
[[nodiscard]] core::Result<Changes> deleteCheck(Logbook& logbook, core::CheckId check);

}  // namespace db
