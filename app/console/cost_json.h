// SPDX-License-Identifier: MIT
// What a rooted plant costs by two methods, for machines.
#pragma once

#include "app/console/json_text.h"
#include "core/money/worth_it.h"

namespace console {

/// `worth` has one pair.
[[nodiscard]] Json jsonOf(const core::Worth& worth, const std::string& currency);

}  // namespace console
