// SPDX-License-Identifier: MIT
// The inputs of reference cases of several arms as the values that stats takes.
#pragma once

#include <vector>

#include "stats/several_proportions/arm_count.h"
#include "tests/support/reference_cases.h"

[[nodiscard]] std::vector<stats::ArmCount> armCountsIn(const support::ReferenceCase& each);
