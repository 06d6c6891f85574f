// SPDX-License-Identifier: MIT
// A comparison for people: the arms, each pair, what is to be minded, and the answer in words.
#pragma once

#include <ostream>

#include "core/comparison/comparison.h"

namespace console {

void printText(const core::Comparison& comparison, std::ostream& out);

}  // namespace console
