// SPDX-License-Identifier: MIT
#pragma once

#include "stats/two_proportions/two_counts.h"

namespace stats {

/// Odds ratio, first over second, given how many succeeded in all: its most likely value and the exact interval.
///
/// The estimate is the conditional one, nearer to 1 than the sample's odds ratio. The interval inverts two one-sided
/// exact tests, so it covers at least `level`, and can include 1 where the two-sided Fisher test gives less than 1 -
/// level: that test orders tables in another way.
///
/// Domain    0 <= successes <= trials in both arms, 0 < level < 1; else std::domain_error.
/// Returns   estimate absent and [0, infinity] when nothing or everything succeeded or an arm is empty; 0 with lower
///           limit 0 at the smallest possible count of the first arm, infinite with an infinite upper limit at the
///           largest.
/// Assumes   two independent binomial counts.
/// Accuracy  within 1e-10 relative.
/// Source    Fisher (1935), J. R. Stat. Soc. 98, 39-82; Cornfield (1956), Proc. 3rd Berkeley Symp. 4, 135-148.
[[nodiscard]] RatioEstimate conditionalOddsRatio(const TwoCounts& counts, double level);

}  // namespace stats
