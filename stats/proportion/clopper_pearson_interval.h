// SPDX-License-Identifier: MIT
#pragma once

#include "stats/interval.h"

namespace stats {

/// Clopper and Pearson's exact interval for one binomial proportion.
///
/// Inverts two one-sided exact tests, so it covers at least `level` whatever p is, usually a good deal more. For the
/// guarantee only; wilsonInterval() is closer to what it says.
///
/// Domain    0 <= successes <= trials, 0 < level < 1; else std::domain_error.
/// Returns   fractions; low is 0 at no success and high is 1 at no failure, exactly. No trials: [0, 1].
/// Assumes   independent trials with the same p.
/// Accuracy  within 1e-12 relative for trials up to 1e6 (beta quantiles).
/// Source    Clopper and Pearson (1934), Biometrika 26, 404-413.
[[nodiscard]] Interval clopperPearsonInterval(int successes, int trials, double level);

}  // namespace stats
