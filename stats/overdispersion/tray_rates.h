// SPDX-License-Identifier: MIT
// The rates of trays, each tray counting once whatever its size: what the tests on tray rates are made of.
#pragma once

#include <span>

#include "stats/overdispersion/tray.h"

namespace stats {

struct RateSpread {
    double mean{};
    double squares{};  // sum of squared distances from the mean; exactly 0 where no tray differs
};

/// successes / trials. The tray has trials.
[[nodiscard]] double rateOf(const Tray& tray);

/// Compared as fractions: rounding does not make trays differ that do not.
[[nodiscard]] bool areRatesAlike(std::span<const Tray> trays);

/// Of at least one tray, all with trials.
[[nodiscard]] RateSpread rateSpread(std::span<const Tray> trays);

}  // namespace stats
