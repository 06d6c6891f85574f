// SPDX-License-Identifier: MIT
#pragma once

#include "stats/interval.h"

namespace stats {

/// Agresti and Coull's interval for one binomial proportion: the textbook formula after adding z^2/2 successes and as
/// many failures.
///
/// It has Wilson's centre and is never narrower. Adds z^2, not 2 + 2, so it follows the level.
///
/// Domain    0 <= successes <= trials, 0 < level < 1; else std::domain_error.
/// Returns   fractions, cut to [0, 1]; low is 0 at no success and high is 1 at no failure, exactly. No trials: [0, 1].
/// Assumes   independent trials with the same p.
/// Accuracy  within 1e-14 absolute.
/// Source    Agresti and Coull (1998), Am. Stat. 52, 119-126.
[[nodiscard]] Interval agrestiCoullInterval(int successes, int trials, double level);

/// The same without cutting: limits may lie outside [0, 1].
[[nodiscard]] Interval agrestiCoullUncut(int successes, int trials, double level);

}  // namespace stats
