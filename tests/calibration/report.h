// SPDX-License-Identifier: MIT
// The page docs/statistics/calibration.md, from what was counted.
#pragma once

#include <iosfwd>
#include <string>

#include "tests/calibration/simulation.h"
#include "tests/calibration/tally.h"

namespace calibration {

void writeReport(const Tally& tally, const SimulationOptions& options, std::ostream& out);

/// The command that makes the same page again; it stands in the page's head.
[[nodiscard]] std::string commandOf(const SimulationOptions& options);

}  // namespace calibration
