// SPDX-License-Identifier: MIT
#include "stats/overdispersion/tray_t_test.h"

#include <algorithm>
#include <cmath>

#include "stats/numeric/distribution_tails.h"
#include "stats/numeric/require.h"
#include "stats/overdispersion/tray_rates.h"

namespace stats {

TrayTTest trayTTest(std::span<const Tray> first, std::span<const Tray> second, double level) {
    requireTrays("trayTTest", first);
    requireTrays("trayTTest", second);
    requireLevel("trayTTest", level);
    const std::vector<Tray> trays1 = traysWithTrials(first), trays2 = traysWithTrials(second);
    TrayTTest test;
    if (trays1.empty() || trays2.empty()) return test;
    const RateSpread spread1 = rateSpread(trays1), spread2 = rateSpread(trays2);
    const double difference = spread1.mean - spread2.mean;
    test.difference = difference;
    test.degreesOfFreedom = static_cast<int>(trays1.size() + trays2.size()) - 2;
    if (test.degreesOfFreedom == 0) return test;
    const double variance = (spread1.squares + spread2.squares) / test.degreesOfFreedom;
    const double error =
        std::sqrt(variance * (1.0 / static_cast<double>(trays1.size()) + 1.0 / static_cast<double>(trays2.size())));
    test.standardError = error;
    if (error == 0) return test;
    test.t = difference / error;
    test.p = studentTwoSidedTail(*test.t, test.degreesOfFreedom);
    const double reach = studentQuantileOfLevel(level, test.degreesOfFreedom) * error;
    test.limits = Interval{.low = std::max(-1.0, difference - reach), .high = std::min(1.0, difference + reach)};
    return test;
}

}  // namespace stats
