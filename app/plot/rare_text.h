// SPDX-License-Identifier: MIT
// How rare something is by luck alone, for people.
#pragma once

#include <QString>

namespace plot {

/// "1 in 120"; "less than 1 in 1000"; from one in ten on as 100ths: "23 in 100". Domain: 0 <= chance <= 1.
[[nodiscard]] QString oneInText(double chance);

}  // namespace plot
