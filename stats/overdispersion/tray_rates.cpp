// SPDX-License-Identifier: MIT
#include "stats/overdispersion/tray_rates.h"

#include <algorithm>
#include <cmath>

namespace stats {

double rateOf(const Tray& tray) {
    return static_cast<double>(tray.successes) / tray.trials;
}

bool areRatesAlike(std::span<const Tray> trays) {
    return std::all_of(trays.begin(), trays.end(), [&trays](const Tray& tray) {
        const Tray& one = trays.front();
        return static_cast<long long>(tray.successes) * one.trials ==
               static_cast<long long>(one.successes) * tray.trials;
    });
}

RateSpread rateSpread(std::span<const Tray> trays) {
    if (areRatesAlike(trays)) return {.mean = rateOf(trays.front()), .squares = 0};
    RateSpread spread;
    for (const Tray& tray : trays) spread.mean += rateOf(tray) / static_cast<double>(trays.size());
    for (const Tray& tray : trays) spread.squares += std::pow(rateOf(tray) - spread.mean, 2);
    return spread;
}

}  // namespace stats
