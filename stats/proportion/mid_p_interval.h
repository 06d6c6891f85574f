// SPDX-License-Identifier: MIT
#pragma once

#include "stats/interval.h"

namespace stats {

/// The mid-p interval for one binomial proportion.
///
/// All p at which neither tail, counting only half of the observed count's probability, is below (1 - level) / 2. It
/// takes away most of what makes clopperPearsonInterval() wider than it says, and with that its guarantee: coverage is
/// near `level` on average and may be below it.
///
/// Domain    0 <= successes <= trials, 0 < level < 1; else std::domain_error.
/// Returns   fractions, low < high; low is 0 at no success and high is 1 at no failure, exactly. No trials: [0, 1]. At
///           levels of a few per cent successes/trials itself may be outside.
/// Assumes   independent trials with the same p.
/// Accuracy  within 1e-11 relative for trials up to 1e6 (roots of beta distribution functions).
/// Source    Lancaster (1949), Biometrika 36, 370-382; Newcombe (1998), Stat. Med. 17, 857-872, method 6.
[[nodiscard]] Interval midPInterval(int successes, int trials, double level);

}  // namespace stats
