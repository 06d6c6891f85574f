// SPDX-License-Identifier: MIT
#pragma once

#include "stats/two_proportions/two_counts.h"

namespace stats {

/// Newcombe's interval for the difference of two rates, first minus second: Wilson's limits of the arms, put together
/// by squares.
///
/// Closed form, never leaves [-1, 1], works with none or all in an arm. Its coverage at 10 to 40 per arm averages 95.2
/// % at level 95 % and never fell below 89.7 %. The primary interval is Miettinen and Nurminen's, see
/// miettinen_nurminen_difference.h; this is the check.
///
/// Domain    0 <= successes <= trials in both arms, 0 < level < 1; else std::domain_error.
/// Returns   limits of p1 - p2; [-1, 1] when an arm is empty.
/// Assumes   two independent binomial counts.
/// Accuracy  within 1e-15 absolute.
/// Source    Newcombe (1998), Stat. Med. 17, 873-890, method 10.
[[nodiscard]] Interval newcombeDifference(const TwoCounts& counts, double level);

/// Method 11 of the same paper: from Wilson's limits with continuity correction.
[[nodiscard]] Interval newcombeContinuityDifference(const TwoCounts& counts, double level);

}  // namespace stats
