// SPDX-License-Identifier: MIT
#include "stats/overdispersion/tray_t_test.h"

#include <algorithm>
#include <cmath>

#include "stats/numeric/distribution_tails.h"
#include "stats/numeric/require.h"

namespace stats {
namespace {

struct RateSpread {
    double mean{};
    double squares{};  // sum of squared distances from the mean
};

double rateOf(const Tray& tray) {
    return static_cast<double>(tray.successes) / tray.trials;
}

RateSpread rateSpread(std::span<const Tray> trays) {
    RateSpread spread;
    for (const Tray& tray : trays) spread.mean += rateOf(tray) / static_cast<double>(trays.size());
    const Tray& one = trays.front();
    // Compared as fractions: rounding must not make trays differ that do not.
    const bool areAlike = std::all_of(trays.begin(), trays.end(), [&one](const Tray& tray) {
        return static_cast<long long>(tray.successes) * one.trials ==
               static_cast<long long>(one.successes) * tray.trials;
    });
    if (areAlike) return {.mean = rateOf(one), .squares = 0};
    for (const Tray& tray : trays) spread.squares += std::pow(rateOf(tray) - spread.mean, 2);
    return spread;
}

}  // namespace

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
    const double reach = studentQuantile(0.5 + level / 2, test.degreesOfFreedom) * error;
    test.limits = Interval{.low = std::max(-1.0, difference - reach), .high = std::min(1.0, difference + reach)};
    return test;
}

}  // namespace stats
