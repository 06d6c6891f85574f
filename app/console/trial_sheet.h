// SPDX-License-Identifier: MIT
// A trial's report and its map for the print command.
#pragma once

#include <iosfwd>
#include <optional>
#include <string>

#include "app/console/surroundings.h"
#include "app/report/sheet.h"
#include "db/logbook.h"

namespace console {

/// With its result where it is due. Nothing when there is no such trial: `err` then says so, naming the logbook's `file`.
[[nodiscard]] std::optional<report::Sheet> trialSheet(const std::string& name, const db::Logbook& logbook,
                                                      const std::string& file, const Surroundings& surroundings,
                                                      std::ostream& err);
/// Which cutting goes where. Nothing when there is no such trial or nothing of it is dealt: `err` then says so.
[[nodiscard]] std::optional<report::Sheet> trialMapSheet(const std::string& name, const db::Logbook& logbook,
                                                         const std::string& file, const Surroundings& surroundings,
                                                         std::ostream& err);

}  // namespace console
