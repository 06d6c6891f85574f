// SPDX-License-Identifier: MIT
#pragma once

#include "stats/two_proportions/two_counts.h"

namespace stats {

/// Miettinen and Nurminen's score interval for the difference of two rates, first minus second.
///
/// All differences d that the score test of p1 - p2 = d wouldn't reject, with the variance at the most likely rates
/// that differ by d, times N/(N - 1). Coverage at 10 to 40 per arm averages 95.0 to 95.9 % at level 95 %, at least 91.2
/// %.
///
/// Domain    0 <= successes <= trials in both arms, 0 < level < 1; else std::domain_error.
/// Returns   limits of p1 - p2; low is -1 exactly when all fail in the first arm and none in the second, high is 1
///           exactly in the opposite case; [-1, 1] when an arm is empty. None against none gives an interval around 0,
///           not a point.
/// Assumes   two independent binomial counts.
/// Accuracy  within 1e-12 absolute: the restricted rates come from halving the likelihood's slope, not from the cubic's
///           closed form, which loses half its digits where roots meet.
/// Source    Miettinen and Nurminen (1985), Stat. Med. 4, 213-226.
[[nodiscard]] Interval miettinenNurminenDifference(const TwoCounts& counts, double level);

/// Mee's interval: the same without N/(N - 1), so a little narrower.
/// Source    Mee (1984), Biometrics 40, 1175-1176.
[[nodiscard]] Interval meeDifference(const TwoCounts& counts, double level);

}  // namespace stats
