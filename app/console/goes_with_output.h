// SPDX-License-Identifier: MIT
// What went with rooting, as JSON and as text.
#pragma once

#include <ostream>

#include "app/console/json_text.h"
#include "core/comparison/goes_with.h"

namespace console {

[[nodiscard]] Json goesWithJson(const core::GoesWith& answer);
void printGoesWith(const core::GoesWith& answer, std::ostream& out);

}  // namespace console
