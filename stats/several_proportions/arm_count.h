// SPDX-License-Identifier: MIT
// One arm of several that are compared at once: what every function of this folder takes.
#pragma once

#include <span>
#include <string_view>

namespace stats {

struct ArmCount {
    int successes{};
    int trials{};
};

/// std::domain_error that names the function unless 0 <= successes <= trials in each arm.
void requireArms(std::string_view function, std::span<const ArmCount> arms);

/// Domain of a score (a dose, a rank): finite, and where it is not 0 of a size from 1e-100 to 1e100, so that squares
/// stay within what a double holds.
void requireScore(std::string_view function, double score);

}  // namespace stats
