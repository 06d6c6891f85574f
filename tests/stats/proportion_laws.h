// SPDX-License-Identifier: MIT
// What every interval for one rate must obey; its test file calls these.
#pragma once

#include "stats/interval.h"

namespace proportion_laws {

using IntervalOf = stats::Interval (*)(int successes, int trials, double level);

/// Successes and failures swapped: limits become one minus the other limit.
void expectMirrorImage(IntervalOf intervalOf);
/// Within [0, 1], around the observed rate, rising with successes, wider at a higher level; exact ends at none and all; [0, 1] without trials.
void expectOrderlyLimits(IntervalOf intervalOf);
/// std::domain_error for impossible counts and levels.
void expectRefusals(IntervalOf intervalOf);
/// How often the interval covers p, by summing the binomial.
[[nodiscard]] double coverage(IntervalOf intervalOf, int trials, double p, double level);

}  // namespace proportion_laws
