// SPDX-License-Identifier: MIT
#pragma once

#include "stats/interval.h"

namespace stats {

/// Wilson's score interval with a continuity correction.
///
/// The p for which |successes/trials - p| - 1/(2 trials) is at most z standard errors at p. Wider than Wilson's, nearly
/// always covers at least `level`; about as wide as Clopper and Pearson's. It always corrects by the full half a count;
/// other programs drop the correction when successes are near half the trials.
///
/// Domain    0 <= successes <= trials, 0 < level < 1; else std::domain_error.
/// Returns   fractions; low is 0 at no success and high is 1 at no failure, exactly. No trials: [0, 1].
/// Assumes   independent trials with the same p.
/// Accuracy  within 1e-14 relative.
/// Source    Newcombe (1998), Stat. Med. 17, 857-872, method 4; Blyth and Still (1983), J. Am. Stat. Assoc. 78,
///           108-116.
[[nodiscard]] Interval wilsonContinuityInterval(int successes, int trials, double level);

}  // namespace stats
