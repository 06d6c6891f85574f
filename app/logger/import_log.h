// SPDX-License-Identifier: MIT
// Brings what was read from a logger's file into the logbook, all or nothing, as one step to undo, and says what came of it.
#pragma once

#include <QString>
#include <optional>

#include "app/logger/log_reader.h"
#include "core/climate/logger_format.h"
#include "db/actions/logger_actions.h"

namespace logger {

/// `remembered`, a new format, is kept in the same step. Contract: `contents` has no faults.
[[nodiscard]] core::Result<db::LoggerAdded> importLog(db::Logbook& logbook, const LogContents& contents,
                                                      const std::string& fileName, core::Moment now,
                                                      const std::optional<core::LoggerFormat>& remembered = {},
                                                      const db::LoggerProgress& progress = {});

/// "8640 values came in. 20 were there already." or "Nothing new: all 8640 values are there already."
[[nodiscard]] QString addedText(const db::LoggerAdded& added);

}  // namespace logger
