// SPDX-License-Identifier: MIT
#include "stats/overdispersion/tray_weighted_t_test.h"

#include <algorithm>
#include <cmath>

#include "stats/numeric/distribution_tails.h"
#include "stats/numeric/require.h"
#include "stats/overdispersion/tray_rates.h"

namespace stats {
namespace {

struct WeightedRates {
    double weight{};  // of all trays
    double mean{};
    double squares{};  // weighted sum of squared distances from the mean; exactly 0 where no tray differs
};

WeightedRates weightedRates(std::span<const Tray> trays, double correlation) {
    const auto weightOf = [correlation](const Tray& tray) {
        return tray.trials / (1 + (tray.trials - 1) * correlation);
    };
    WeightedRates rates;
    for (const Tray& tray : trays) rates.weight += weightOf(tray);
    if (areRatesAlike(trays)) {
        rates.mean = rateOf(trays.front());
        return rates;
    }
    for (const Tray& tray : trays) rates.mean += weightOf(tray) * rateOf(tray) / rates.weight;
    for (const Tray& tray : trays) rates.squares += weightOf(tray) * std::pow(rateOf(tray) - rates.mean, 2);
    return rates;
}

TrayTTest weightedTTest(std::span<const Tray> trays1, std::span<const Tray> trays2, double correlation, double level) {
    TrayTTest test;
    if (trays1.empty() || trays2.empty()) return test;
    const WeightedRates rates1 = weightedRates(trays1, correlation), rates2 = weightedRates(trays2, correlation);
    const double difference = rates1.mean - rates2.mean;
    test.difference = difference;
    test.degreesOfFreedom = static_cast<int>(trays1.size() + trays2.size()) - 2;
    if (test.degreesOfFreedom == 0) return test;
    const double variance = (rates1.squares + rates2.squares) / test.degreesOfFreedom;
    const double error = std::sqrt(variance * (1 / rates1.weight + 1 / rates2.weight));
    test.standardError = error;
    if (error == 0) return test;
    test.t = difference / error;
    test.p = studentTwoSidedTail(*test.t, test.degreesOfFreedom);
    const double reach = studentQuantileOfLevel(level, test.degreesOfFreedom) * error;
    test.limits = Interval{.low = std::max(-1.0, difference - reach), .high = std::min(1.0, difference + reach)};
    return test;
}

void requireArms(std::string_view function, std::span<const Tray> first, std::span<const Tray> second, double level) {
    requireTrays(function, first);
    requireTrays(function, second);
    requireLevel(function, level);
}

}  // namespace

TrayTTest trayWeightedTTest(std::span<const Tray> first, std::span<const Tray> second, double correlation,
                            double level) {
    requireArms("trayWeightedTTest", first, second, level);
    if (!(correlation >= 0 && correlation <= 1))
        throwDomainError("trayWeightedTTest", "correlation", correlation, "from 0 to 1");
    return weightedTTest(traysWithTrials(first), traysWithTrials(second), correlation, level);
}

TrayTTest trayGuardedTTest(std::span<const Tray> first, std::span<const Tray> second, double level) {
    requireArms("trayGuardedTTest", first, second, level);
    const std::vector<Tray> trays1 = traysWithTrials(first), trays2 = traysWithTrials(second);
    const TrayTTest byCuttings = weightedTTest(trays1, trays2, guardedCorrelations[0], level);
    const TrayTTest byTrays = weightedTTest(trays1, trays2, guardedCorrelations[1], level);
    if (!byCuttings.p || !byTrays.p) return byCuttings;
    TrayTTest test = *byCuttings.p >= *byTrays.p ? byCuttings : byTrays;
    test.difference = byCuttings.difference;
    if (*byCuttings.t * *byTrays.t <= 0) test.p = 1;
    test.limits = Interval{.low = std::min(byCuttings.limits->low, byTrays.limits->low),
                           .high = std::max(byCuttings.limits->high, byTrays.limits->high)};
    return test;
}

}  // namespace stats
