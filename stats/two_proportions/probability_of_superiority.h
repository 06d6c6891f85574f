// SPDX-License-Identifier: MIT
#pragma once

#include "stats/two_proportions/two_counts.h"

namespace stats {

/// How probable it is, after the counts, that the first arm has the larger rate.
///
/// Both rates have Jeffreys's Beta(1/2, 1/2) before the counts. A probability about the rates, not a p value, and to be
/// labelled so.
///
/// Domain    0 <= successes <= trials in both arms; else std::domain_error.
/// Returns   P(p1 > p2); an empty arm keeps what it was before the counts.
/// Assumes   two independent binomial counts.
/// Accuracy  within 1e-11 absolute for trials up to 1e5. Integrated over asin(sqrt(p)), where the posterior is smooth
///           up to both ends.
/// Source    Jeffreys (1961), Theory of Probability, 3rd ed., section 5.1 (the prior).
[[nodiscard]] double probabilityOfSuperiority(const TwoCounts& counts);

}  // namespace stats
