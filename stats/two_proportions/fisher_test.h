// SPDX-License-Identifier: MIT
#pragma once

#include "stats/two_proportions/two_counts.h"

namespace stats {

/// p values of Fisher's exact test, given how many succeeded in all.
struct FisherTest {
    double twoSided{1};     // all tables not more likely than the observed; not twice one tail
    double less{1};         // first arm has as few successes or fewer
    double greater{1};      // as many or more
    double midTwoSided{1};  // tables less likely, and half of all that are as likely as the observed
    double midLess{1};      // one tail with half the observed table
    double midGreater{1};
    double midCentral{1};  // twice the smaller of the two mid tails, at most 1
};

/// Fisher's exact test that two rates are equal.
///
/// Conservative: at 20 per arm the true error of a test at 5 % is about 2 %. The mid-p versions come nearer to what
/// they say, without a guarantee; boschlooTest() has both. Two tables count as equally likely when their probabilities
/// agree within 1e-7.
///
/// Domain    0 <= successes <= trials in both arms; else std::domain_error.
/// Returns   probabilities; all 1 when nothing or everything succeeded or an arm is empty (only one table is possible).
/// Assumes   two independent binomial counts.
/// Accuracy  within 1e-12 relative for arms up to 1000.
/// Source    Fisher (1935), J. R. Stat. Soc. 98, 39-82; mid-p: Lancaster (1961), J. Am. Stat. Assoc. 56, 223-234.
[[nodiscard]] FisherTest fisherTest(const TwoCounts& counts);

}  // namespace stats
