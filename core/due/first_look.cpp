// SPDX-License-Identifier: MIT
#include "core/due/first_look.h"

#include <algorithm>
#include <cmath>

#include "core/field_faults.h"

namespace core {

Result<int> usualFirstLook(double lowDaysToRoot) {
    constexpr int earliest = 5;
    if (auto fault = faultInFigure("Days to root", lowDaysToRoot, 1, 3650, "1 to 3650")) return refused({*fault});
    return std::max(earliest, static_cast<int>(std::ceil(lowDaysToRoot / 2)));
}

}  // namespace core
