// SPDX-License-Identifier: MIT
// Two arms of several trays each: how often would chance alone, dealing whole trays to the arms, give a difference as
// large?
#pragma once

#include <optional>
#include <span>
#include <stop_token>

#include "stats/numeric/seeded_random.h"
#include "stats/overdispersion/tray.h"

namespace stats {

struct TrayPermutationTest {
    std::optional<double> statistic;  // |difference of pooled rates|; absent where an arm has no trays
    double p{1.0};
    double allocations{1.0};  // ways of dealing the trays to the arms
    bool isExact{true};       // false: drawn at random, p = (as large + 1) / (drawn + 1)
    int drawn{};              // 0 when exact
    bool wasStopped{};        // p is then meaningless
};

/// The permutation test on whole trays: exact while there are at most `enumerateUpTo` allocations, else from `draws`
/// random ones.
///
/// One tray an arm gives p = 1: method and container cannot be told apart. With 3 + 3 trays p is never below 0.1,
/// with 4 + 4 never below 0.029, so it is shown from four trays an arm.
///
/// Domain    0 <= successes <= trials in each tray, draws >= 1; else std::domain_error. Empty trays are left out.
/// Returns   the share of allocations whose statistic is at least the observed one (up to a relative 1e-10, so that
///           ties are ties).
/// Assumes   under the null hypothesis any tray could as well have stood in the other arm.
/// Accuracy  exact, or a standard error of sqrt(p (1 - p) / draws). `random` is used only in the second case.
/// Source    Edgington and Onghena (2007), Randomization Tests, 4th ed.; Phipson and Smyth (2010) for the + 1, Stat.
///           Appl. Genet. Mol. Biol. 9, article 39.
[[nodiscard]] TrayPermutationTest trayPermutationTest(std::span<const Tray> first, std::span<const Tray> second,
                                                      SeededRandom& random, double enumerateUpTo = 200'000,
                                                      int draws = 100'000, std::stop_token stop = {});

}  // namespace stats
