// SPDX-License-Identifier: MIT
#include "tests/calibration/judged_plants.h"

#include <array>
#include <cmath>
#include <vector>

#include "stats/strata/mantel_haenszel.h"
#include "tests/calibration/season.h"

namespace calibration {
namespace {

constexpr int plants = 4;

struct Rates {
    double first{}, second{};
};

stats::Stratum stratumOf(const Rates& rates, double correlation, int trays, stats::SeededRandom& random) {
    stats::Stratum stratum;
    constexpr TraySize size;
    const auto count = [&](double rate, int& successes, int& trials) {
        const ShareDistribution shares(rate, correlation, Spread::Beta);
        for (int tray = 0; tray < trays; ++tray) {
            const int stuck =
                size.fewest + static_cast<int>(random.below(static_cast<std::uint64_t>(size.most - size.fewest + 1)));
            successes += random.binomial(stuck, shares.draw(random));
            trials += stuck;
        }
    };
    count(rates.first, stratum.successes1, stratum.trials1);
    count(rates.second, stratum.successes2, stratum.trials2);
    return stratum;
}

bool covers(const stats::Interval& interval, double truth) {
    return interval.low <= truth && truth <= interval.high;
}

}  // namespace

void judgePooledOverPlants(double correlation, int traysPerPlant, stats::SeededRandom& random, Tally& tally) {
    const Cell cell{.correlation = correlation, .trays = traysPerPlant};
    const double oddsRatio = stats::portableExp(random.normal(0, 0.7)), difference = 0.3 * (random.uniform() - 0.5);
    std::vector<stats::Stratum> alikeInOdds, alikeInDifference;
    for (int plant = 0; plant < plants; ++plant) {
        const double rate = drawRate(random), odds = oddsRatio * rate / (1 - rate);
        alikeInOdds.push_back(
            stratumOf({.first = odds / (1 + odds), .second = rate}, correlation, traysPerPlant, random));
        const double middle = 0.2 + 0.6 * random.uniform();
        alikeInDifference.push_back(stratumOf({.first = middle + difference / 2, .second = middle - difference / 2},
                                              correlation, traysPerPlant, random));
    }
    const auto odds = stats::mantelHaenszelOddsRatio(alikeInOdds, nominalLevel);
    tally.add("Mantel-Haenszel odds ratio", cell, covers(odds.limits, oddsRatio));
    const auto pooled = stats::mantelHaenszelDifference(alikeInDifference, nominalLevel);
    tally.add("Mantel-Haenszel difference", cell, covers(pooled.limits, difference),
              pooled.limits.high - pooled.limits.low);
}

}  // namespace calibration
