// SPDX-License-Identifier: MIT
// What a rooted plant costs by two methods, for people: the figures, the parts, what would turn it, and the answer in words.
#pragma once

#include <ostream>

#include "core/money/worth_it.h"

namespace console {

/// `worth` has one pair.
void printText(const core::Worth& worth, const std::string& currency, std::ostream& out);

}  // namespace console
