// SPDX-License-Identifier: MIT
// Who roots and how fast, as JSON and as text.
#pragma once

#include <ostream>

#include "app/console/json_text.h"
#include "core/comparison/comparison.h"

namespace console {

[[nodiscard]] Json speedJson(const core::RootingSpeed& speed);
[[nodiscard]] Json speedJson(const core::SpeedDifference& speed);
/// A line for each arm, of the curve that fits it best.
void printSpeeds(const core::Comparison& comparison, std::ostream& out);
/// "1.21 (1.05 to 1.40) as counted, p = 0.008; ...", or why there is none.
[[nodiscard]] std::string speedText(const core::SpeedDifference& speed);

}  // namespace console
