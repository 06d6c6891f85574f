// SPDX-License-Identifier: MIT
// A comparison for machines. The names are a promise: they may grow, none changes its meaning (docs/manual/command_line.md).
#pragma once

#include "app/console/json_text.h"
#include "core/comparison/comparison.h"

namespace console {

[[nodiscard]] Json jsonOf(const core::Comparison& comparison);

}  // namespace console
