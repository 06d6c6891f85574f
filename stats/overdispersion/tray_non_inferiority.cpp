// SPDX-License-Identifier: MIT
#include "stats/overdispersion/tray_non_inferiority.h"

#include "stats/numeric/distribution_tails.h"
#include "stats/numeric/require.h"
#include "stats/overdispersion/tray_t_test.h"
#include "stats/two_proportions/non_inferiority.h"

namespace stats {

std::optional<TrayNonInferiority> trayNonInferiority(std::span<const Tray> first, std::span<const Tray> second,
                                                     double margin, double level) {
    requireTrays("trayNonInferiority", first);
    requireTrays("trayNonInferiority", second);
    requireMargin("trayNonInferiority", margin);
    requireLevel("trayNonInferiority", level);
    const TrayTTest test = trayTTest(first, second, level);
    if (!test.limits) return {};
    const double t = (*test.difference + margin) / *test.standardError;
    const double oneSided = studentTwoSidedTail(t, test.degreesOfFreedom) / 2;
    return TrayNonInferiority{.difference = *test.difference,
                              .limits = *test.limits,
                              .t = t,
                              .p = t >= 0 ? oneSided : 1 - oneSided,
                              .isShown = test.limits->low > -margin};
}

}  // namespace stats
