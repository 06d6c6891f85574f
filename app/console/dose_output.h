// SPDX-License-Identifier: MIT
// Series of doses, as JSON and as text.
#pragma once

#include <ostream>
#include <vector>

#include "app/console/json_text.h"
#include "core/comparison/doses.h"

namespace console {

[[nodiscard]] Json dosesJson(const std::vector<core::DoseSeries>& all);
void printDoses(const std::vector<core::DoseSeries>& all, std::ostream& out);

}  // namespace console
