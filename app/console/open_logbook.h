// SPDX-License-Identifier: MIT
// How commands open and make logbooks.
#pragma once

#include <filesystem>
#include <functional>
#include <string>

#include "app/console/surroundings.h"
#include "core/result.h"
#include "db/logbook.h"

namespace console {

[[nodiscard]] db::Logbook openToRead(const std::string& file, const Surroundings& surroundings);
[[nodiscard]] db::Logbook openToWrite(const std::string& file, const Surroundings& surroundings);

/// Makes a new logbook and lets `fill` write into it. When that is refused or fails, no file is left behind.
[[nodiscard]] core::Result<db::Changes> createAndFill(
    const std::string& file, const core::LogbookFacts& facts, const Surroundings& surroundings,
    const std::function<core::Result<db::Changes>(db::Logbook&)>& fill);

/// What a logbook is called that nobody has named: its file, without the ending.
[[nodiscard]] std::string nameFromFile(const std::string& file);

}  // namespace console
