// SPDX-License-Identifier: MIT
#pragma once

#include "stats/two_proportions/two_counts.h"

namespace stats {

/// Ratio of two rates, first over second, with Koopman's score interval.
///
/// All ratios r that the score test of p1 = r p2 wouldn't reject. It answers at every table, unlike the logarithmic
/// interval of katz_ratio.h, which has no width with everything rooted and no limits with a zero.
///
/// Domain    0 <= successes <= trials in both arms, 0 < level < 1; else std::domain_error.
/// Returns   estimate absent when both arms have no success or an arm is empty, then [0, infinity]; infinite with an
///           infinite upper limit when only the second has none; 0 with lower limit 0 when only the first has none.
/// Assumes   two independent binomial counts.
/// Accuracy  within 1e-10 relative.
/// Source    Koopman (1984), Biometrics 40, 513-517.
[[nodiscard]] RatioEstimate koopmanRatio(const TwoCounts& counts, double level);

/// The same with Miettinen and Nurminen's variance factor N/(N - 1): a little wider.
/// Source    Miettinen and Nurminen (1985), Stat. Med. 4, 213-226.
[[nodiscard]] RatioEstimate miettinenNurminenRatio(const TwoCounts& counts, double level);

}  // namespace stats
