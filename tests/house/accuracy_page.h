// SPDX-License-Identifier: MIT
// docs/statistics/accuracy.md as text: what each statistics function was checked against, and how far off it was at worst.
#pragma once

#include <filesystem>
#include <map>
#include <string>
#include <vector>

namespace house {

struct LedgerRow {
    std::string source;       // where the cases come from
    std::string independent;  // how they were computed otherwise
    int cases{};
    double worst{};
};

using LedgerRows = std::map<std::string, std::vector<LedgerRow>>;  // by function

/// The rows that the test programs left in `folder`, put together: those about the same function, source and other way are one row.
[[nodiscard]] LedgerRows ledgerIn(const std::filesystem::path& folder);

struct PublicFunction {
    std::string name;
    std::string header;  // "stats/proportion/wilson_interval.h"
};

/// Free functions that the headers of stats declare for others, numeric apart; overloads once. In order of header.
[[nodiscard]] std::vector<PublicFunction> publicStatsFunctions();

/// `committed` is the page as it was: a bound there stays as long as the measured error is below it and not a thousand times smaller, since the
/// last bits of an error depend on the processor's mathematics library.
[[nodiscard]] std::string accuracyPage(const std::vector<PublicFunction>& functions, const LedgerRows& ledger,
                                       const std::string& committed = {});

/// "exact", "below 1e-12": the next power of ten.
[[nodiscard]] std::string errorText(double worst);

}  // namespace house
