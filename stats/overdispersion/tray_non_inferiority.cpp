// SPDX-License-Identifier: MIT
#include "stats/overdispersion/tray_non_inferiority.h"

#include <algorithm>
#include <limits>

#include "stats/numeric/distribution_tails.h"
#include "stats/numeric/require.h"
#include "stats/overdispersion/tray_weighted_t_test.h"
#include "stats/two_proportions/non_inferiority.h"

namespace stats {

std::optional<TrayNonInferiority> trayNonInferiority(std::span<const Tray> first, std::span<const Tray> second,
                                                     double margin, double level) {
    requireTrays("trayNonInferiority", first);
    requireTrays("trayNonInferiority", second);
    requireMargin("trayNonInferiority", margin);
    requireLevel("trayNonInferiority", level);
    const TrayTTest guarded = trayGuardedTTest(first, second, level);
    if (!guarded.limits) return {};
    double t = std::numeric_limits<double>::infinity();
    for (const double correlation : guardedCorrelations) {
        const TrayTTest test = trayWeightedTTest(first, second, correlation, level);
        t = std::min(t, (*test.difference + margin) / *test.standardError);
    }
    const double oneSided = studentTwoSidedTail(t, guarded.degreesOfFreedom) / 2;
    return TrayNonInferiority{.difference = *guarded.difference,
                              .limits = *guarded.limits,
                              .t = t,
                              .p = t >= 0 ? oneSided : 1 - oneSided,
                              .isShown = guarded.limits->low > -margin};
}

}  // namespace stats
