// SPDX-License-Identifier: MIT
// What costs and rates say, as a grower reads it: the figure, its interval, what is still open.
#pragma once

#include <string>
#include <vector>

#include "core/money/worth_it.h"

namespace core {

/// "0.62 EUR", two decimals; below a tenth two figures that count, such as "0.0043 EUR".
[[nodiscard]] std::string moneyInWords(double amount, const std::string& currency);

/// "A rooted plant costs 0.62 EUR by media tray (0.55 to 0.71, 95 % interval; 84 of 118 rooted in 6 batches)." None rooted and nothing priced are
/// said as such.
[[nodiscard]] std::string perRootedInWords(const WorthOfMethod& worth, double level, const std::string& currency);

[[nodiscard]] std::string pairInWords(const WorthOfPair& pair, const Worth& worth, const std::string& currency);

/// What to mind when reading the costs.
[[nodiscard]] std::vector<std::string> worthCautions(const Worth& worth, const LogbookFacts& facts);

/// The verdicts one after the other; without a pair, what each method costs.
[[nodiscard]] std::string worthInWords(const Worth& worth, const std::string& currency);

}  // namespace core
