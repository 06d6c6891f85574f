// SPDX-License-Identifier: MIT
// A simulated season as a grower would have written it down.
#pragma once

#include <vector>

#include "core/records.h"
#include "tests/calibration/season.h"

namespace calibration {

inline constexpr const char* firstMethod = "first";  // of the season's first arm
inline constexpr const char* secondMethod = "second";

/// With these two methods.
[[nodiscard]] core::Shelves shelvesOfSeason();

/// Where the trays stood.
enum class Stations { OneEach, OneAnArm };

/// Each tray a batch. A method's batches come in the order of the season's trays.
[[nodiscard]] std::vector<core::BatchRecord> recordsOf(const Season& season, Stations stations = Stations::OneEach);

}  // namespace calibration
