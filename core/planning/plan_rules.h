// SPDX-License-Identifier: MIT
// What a plan must obey before it is written down. A need-by day may lie in the past: then the plan is late, not wrong.
#pragma once

#include "core/records.h"
#include "core/result.h"

namespace core {

inline constexpr int mostPlantsWanted = 10'000;  // as how_many.h plans for

[[nodiscard]] Refusals faultsIn(const Plan& plan, const Shelves& shelves);

}  // namespace core
