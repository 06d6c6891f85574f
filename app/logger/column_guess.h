// SPDX-License-Identifier: MIT
// What the columns of a file are likely to be, by their names, their units and their first rows: something to begin with, shown above each
// column for the grower to put right. What can't be told is left out or left unsaid, not guessed.
#pragma once

#include "app/logger/file_form.h"
#include "core/climate/logger_mapping.h"
#include "core/records.h"

namespace logger {

/// Quantity and unit of a column with values, by its name; LeftOut where it names none, or one whose unit is open (ppm of which scale).
[[nodiscard]] core::LoggerColumn columnFromName(const std::string& name, const core::DisplayUnits& units);

/// All but the form of the time and the zone. The station is the one that the column, the lines above it or the file's name name; else the only
/// one that there is.
[[nodiscard]] core::LoggerMapping guessedMapping(const FileTop& top, const std::string& fileName,
                                                 const core::Shelves& shelves);

}  // namespace logger
