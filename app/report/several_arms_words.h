// SPDX-License-Identifier: MIT
// The line on all arms of a comparison at once, the same on the screen and on paper.
#pragma once

#include <QString>

#include "core/comparison/comparison.h"

namespace report {

[[nodiscard]] QString severalArmsText(const core::SeveralArms& several);

}  // namespace report
