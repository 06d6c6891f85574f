// SPDX-License-Identifier: MIT
#include "stats/time_to_event/curve_quantiles.h"

#include <algorithm>

#include "stats/numeric/require.h"

namespace stats {

ShareBounds cumulativeShare(std::span<const SupportInterval> curve, double day) {
    ShareBounds bounds;
    for (const SupportInterval& support : curve) {
        if (support.right <= day) bounds.atLeast += support.mass;
        if (support.left < day || support.right <= day) bounds.atMost += support.mass;
    }
    return {.atLeast = std::min(1.0, bounds.atLeast), .atMost = std::min(1.0, bounds.atMost)};
}

double interpolatedShare(std::span<const SupportInterval> curve, double day) {
    double share = 0;
    for (const SupportInterval& support : curve) {
        if (support.right <= day) {
            share += support.mass;
        } else if (support.left < day) {
            share += support.mass * (day - support.left) / (support.right - support.left);
        }
    }
    return std::min(1.0, share);
}

std::optional<QuantileDay> quantileDay(std::span<const SupportInterval> curve, double target, ShareOf of) {
    if (!(target > 0 && target <= 1)) throwDomainError("quantileDay", "target", target, "above 0 and at most 1");
    constexpr double kRounding = 1e-9;
    double wanted = target;
    if (of == ShareOf::ThoseWithTheEvent) {
        double all = 0;
        for (const SupportInterval& support : curve) all += support.mass;
        wanted *= all;
    }
    double before = 0;
    for (const SupportInterval& support : curve) {
        if (support.mass > 0 && before + support.mass >= wanted - kRounding) {
            const double part = std::clamp((wanted - before) / support.mass, 0.0, 1.0);
            return QuantileDay{.after = support.left,
                               .by = support.right,
                               .interpolated = support.left + part * (support.right - support.left)};
        }
        before += support.mass;
    }
    return {};
}

}  // namespace stats
