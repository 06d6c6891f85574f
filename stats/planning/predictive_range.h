// SPDX-License-Identifier: MIT
// How many of a number stuck will succeed: the range around what is to be expected. The laws are those of predictive_count.h, and so are the
// meanings of `traySize` and `livesOn`. A range for a count that is still to come, wider than an interval for the rate behind it.
#pragma once

#include "stats/overdispersion/beta_binomial_posterior.h"

namespace stats {

struct CountRange {
    int low{};
    int high{};

    bool operator==(const CountRange&) const = default;
};

/// Equal-tailed range of Binomial(count, rate * livesOn): the largest `low` and the smallest `high` for which
/// P(fewer than low) and P(more than high) are (1 - level) / 2 at most each.
///
/// Domain    0 <= count <= 1 000 000, 0 <= rate <= 1, 0 < level < 1, 0 < livesOn <= 1; else std::domain_error.
/// Returns   it holds at least `level`, often more: counts are whole.
/// Accuracy  as countForKnownRate(); exact but where a tail is (1 - level) / 2 to 12 digits.
/// Source    as countForKnownRate().
[[nodiscard]] CountRange rangeForKnownRate(int count, double rate, double level, double livesOn = 1);

/// The same under the law of countForPastRecords().
///
/// Domain    0 <= count <= 1 000 000, 0 <= successes <= trials, 0 < level < 1; else std::domain_error.
/// Source    as countForPastRecords(); a range for what is to come: Hahn and Meeker (1991), Statistical Intervals, ch. 2 (from memory).
[[nodiscard]] CountRange rangeForPastRecords(int count, int successes, int trials, double level);

/// The same under the law of countForPastBatches(): what the rate may be, trays that differ, and chance, all in one.
///
/// Domain    as countForPastBatches(), 0 <= count <= 20 000, 0 < level < 1; else std::domain_error.
/// Accuracy  both tails within 1e-5 up to 600 stuck, steps doubled until they are: 50 take some milliseconds, 600 half a second. Beyond that the
///           sum over trays is taken as normal at each rate and correlation, with its own mean and variance, and what the rate may be stays
///           exact: ends within 1 % of the count, measured at 601 to 1000 in trays of 20 to 300.
[[nodiscard]] CountRange rangeForPastBatches(int count, const PastBatches& past, int traySize, double level,
                                             double livesOn = 1);

}  // namespace stats
