// SPDX-License-Identifier: MIT
#pragma once

#include "stats/interval.h"

namespace stats {

/// Wilson's score interval for one binomial proportion.
///
/// All p that a two-sided score test would not reject. Our default, since it stays inside [0, 1] and its coverage is
/// near `level` on average already at ten trials. It gives no guarantee: at 10 trials and p = 0.3 the 95 % interval
/// covers 92.4 % of the time. For a guarantee use clopperPearsonInterval(). The textbook interval (p +- z s.e.) is left
/// out on purpose: it has width zero at 0/n.
///
/// Domain    0 <= successes <= trials, 0 < level < 1; else std::domain_error that names argument and value.
/// Returns   fractions, low <= successes/trials <= high; low is 0 at no success and high is 1 at no failure, exactly.
///           No trials: [0, 1].
/// Assumes   independent trials with the same p. Units that share a container are not: see
///           overdispersion/tray_interval.h.
/// Accuracy  limits within 4e-16 relative for trials up to 1e6, given the normal quantile. The lower root comes from
///           the product of the roots; the usual difference loses a factor of 20 when successes are few.
/// Source    Wilson (1927), J. Am. Stat. Assoc. 22, 209-212.
[[nodiscard]] Interval wilsonInterval(int successes, int trials, double level);

/// The same for a proportion of an effective number of trials that needn't be whole, as clustered counts have.
///
/// Domain    0 <= proportion <= 1, trials > 0, 0 < level < 1; else std::domain_error.
[[nodiscard]] Interval wilsonIntervalOfEffective(double proportion, double trials, double level);

}  // namespace stats
