// SPDX-License-Identifier: MIT
// Is the first way as good as the second, within a margin? Not "is it better", and not "is there a difference": a trial
// that finds no difference has not shown that two ways are alike.
//
//     // "As good as the mist bench, within 10 in 100?"
//     const NonInferiority answer = nonInferiority({18, 24, 20, 24}, 0.10, 0.95);
#pragma once

#include <optional>
#include <string_view>

#include "stats/two_proportions/two_counts.h"

namespace stats {

struct NonInferiority {
    std::optional<double> difference;  // first rate less second; absent where an arm is empty
    Interval limits{-1.0, 1.0};        // Miettinen and Nurminen's, two-sided
    std::optional<double> z;           // absent where an arm is empty
    double p{1.0};                     // of the one-sided test that the first is worse by the margin or more
    bool isShown{};                    // limits.low > -margin
};

/// The score test that the first arm's rate is worse than the second's by less than `margin`.
///
/// z = (difference + margin) / s.e., the standard error taken at the most likely rates that differ by exactly -margin,
/// with Miettinen and Nurminen's factor N/(N - 1), so that test and interval agree: isShown where z is above the
/// quantile of the two-sided `level`, that is p below (1 - level) / 2. Farrington and Manning's own statistic leaves
/// the factor out.
///
/// Domain    0 <= successes <= trials in both arms, 0 < margin < 1, 0 < level < 1; else std::domain_error.
/// Returns   an empty arm: no difference, limits [-1, 1], p = 1, not shown.
/// Assumes   two independent binomial counts; the margin was set before looking.
/// Accuracy  z within 1e-13 absolute.
/// Source    Farrington and Manning (1990), Stat. Med. 9, 1447-1454; Miettinen and Nurminen (1985), Stat. Med. 4,
///           213-226.
[[nodiscard]] NonInferiority nonInferiority(const TwoCounts& counts, double margin, double level);

/// Domain: 0 < margin < 1.
void requireMargin(std::string_view function, double margin);

}  // namespace stats
