// SPDX-License-Identifier: MIT
// Inside the words of mixes only.
#pragma once

#include <QString>

#include "core/units/display_units.h"

namespace report {

/// That the sums are in L and mS/cm and what those are in the grower's units; empty where they are the same.
[[nodiscard]] QString sumsInText(const core::DisplayUnits& units);

}  // namespace report
