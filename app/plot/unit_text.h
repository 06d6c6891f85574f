// SPDX-License-Identifier: MIT
// Stored quantities as the grower reads them: in the unit that the logbook sets, with the unit after the figure.
#pragma once

#include <QString>

#include "core/records.h"

namespace plot {

[[nodiscard]] QString lengthUnitText(core::LengthUnit unit);                  // "mm", "in"
[[nodiscard]] QString lengthText(double millimetres, core::LengthUnit unit);  // "10 mm", "0.39 in"
[[nodiscard]] QString rootLengthText(const core::LogbookFacts& facts);        // what counts as rooted

}  // namespace plot
