// SPDX-License-Identifier: MIT
// From how many batches on has the way with the dearer equipment paid for it by what each trial that succeeds costs less?
#pragma once

#include <optional>
#include <vector>

#include "stats/overdispersion/beta_binomial_posterior.h"

namespace stats {

/// What a way to try costs: once, and with each batch.
struct Outlay {
    double upFront{};              // money, 0 or more
    double perBatch{};             // money, 0 or more
    double trialsPerBatch{1};      // above 0
    std::vector<RatePoint> rates;  // ratePosterior()
};

struct BreakEven {
    int batches{};          // so many were asked about
    double chanceByThen{};  // that `dear` has cost less by then than as many successes of `cheap`, and stays so
    double chanceEver{};    // the same after any number of batches
    std::optional<int>
        low;  // between which numbers of batches it comes at the level asked; absent: never, or beyond `mostBatches`
    std::optional<int> middle;
    std::optional<int> high;
};

/// Beyond it a break-even is none: no equipment lasts so long.
inline constexpr int mostBatchesToBreakEven = 1'000'000;

/// For the same number of successes: n batches of `dear` cost upFront + n perBatch; as many successes take n r batches of `cheap`, r being
/// trialsPerBatch x rate of the one over that of the other, and cost its upFront + n r perBatch. `dear` breaks even with the first n from which
/// on it costs less; rates are only known by their laws, so n has a law too: P(n <= x) is the probability that it costs less after x batches
/// and goes on to.
///
/// Domain    money finite; trialsPerBatch above 0, finite; 1 <= batches <= mostBatchesToBreakEven; 0 < level < 1; rates as chanceCheaper(); else
///           std::domain_error.
/// Returns   low, middle, high: the least n with P(n <= x) of (1 - level) / 2, 1/2 and (1 + level) / 2 at least.
/// Assumes   as chanceCheaper(); every batch alike.
/// Accuracy  chances as chanceCheaper(); numbers are exact, given these.
/// Source    from the definition.
[[nodiscard]] BreakEven breakEven(const Outlay& dear, const Outlay& cheap, int batches, double level);

}  // namespace stats
