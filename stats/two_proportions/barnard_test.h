// SPDX-License-Identifier: MIT
#pragma once

#include "stats/two_proportions/two_counts.h"

namespace stats {

struct BarnardTest {
    double statistic{};  // pooled Z, first minus second; 0 where it is not defined
    double twoSided{1};  // tables ordered by |Z|; not twice one side
    double less{1};      // ordered by Z
    double greater{1};
};

/// Barnard's unconditional exact test that two rates are equal, tables ordered by the pooled Z statistic (Suissa and
/// Shuster).
///
/// The largest probability, over the rate that both arms would share, of a table whose Z is at least as extreme.
/// Whether two tables are tied is decided in whole numbers: comparing rounded Z values loses tied tables and can make p
/// too small by 0.04.
///
/// Domain    0 <= successes <= trials in both arms, at most a million trials in all; else std::domain_error.
/// Returns   probabilities; 1 when nothing or everything succeeded, or an arm is empty.
/// Assumes   two independent binomial counts. Time grows with (trials1 + trials2) * min(trials1, trials2).
/// Accuracy  within 1e-9 absolute: see numeric/bernstein_maximum.h.
/// Source    Barnard (1945), Nature 156, 177; Suissa and Shuster (1985), J. R. Stat. Soc. A 148, 317-327.
[[nodiscard]] BarnardTest barnardTest(const TwoCounts& counts);

}  // namespace stats
