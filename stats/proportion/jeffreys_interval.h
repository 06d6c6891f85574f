// SPDX-License-Identifier: MIT
#pragma once

#include "stats/interval.h"

namespace stats {

/// Jeffreys's interval for one binomial proportion.
///
/// Equal tails of the Beta(successes + 1/2, failures + 1/2) posterior; at no success the lower and at no failure the
/// upper limit is moved to the end of the range, without which the interval would miss p near 0 and 1.
///
/// Domain    0 <= successes <= trials, 0 < level < 1; else std::domain_error.
/// Returns   fractions; low is 0 at no success and high is 1 at no failure, exactly. No trials: [0, 1].
/// Assumes   independent trials with the same p.
/// Accuracy  within 1e-11 relative.
/// Source    Brown, Cai and DasGupta (2001), Stat. Sci. 16, 101-133.
[[nodiscard]] Interval jeffreysInterval(int successes, int trials, double level);

/// The same posterior's equal tails without the rule for the ends, as a Bayesian sum needs them.
[[nodiscard]] Interval jeffreysEqualTails(int successes, int trials, double level);

}  // namespace stats
