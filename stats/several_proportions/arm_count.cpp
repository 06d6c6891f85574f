// SPDX-License-Identifier: MIT
#include "stats/several_proportions/arm_count.h"

#include <cmath>

#include "stats/numeric/require.h"

namespace stats {

void requireArms(std::string_view function, std::span<const ArmCount> arms) {
    for (const ArmCount& arm : arms) requireCounts(function, arm.successes, arm.trials);
}

void requireScore(std::string_view function, double score) {
    const double size = std::abs(score);
    if (size != 0 && !(size >= 1e-100 && size <= 1e100)) {
        throwDomainError(function, "score", score, "0 or from 1e-100 to 1e100 in size");
    }
}

}  // namespace stats
