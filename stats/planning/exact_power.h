// SPDX-License-Identifier: MIT
// How often an exact test would find a difference, summed over every outcome of both arms. Quicker and rougher:
// normal_power.h. The other way round: sample_size.h.
#pragma once

#include "stats/two_proportions/fisher_ordering.h"

namespace stats {

/// Two arms of a trial to come, with the rates supposed.
struct PlannedArms {
    int trials1{};
    int trials2{};
    double rate1{};
    double rate2{};
};

struct ExactPower {
    double power{};  // probability of p <= alpha at the rates supposed
    double size{};   // its largest value when both arms have one rate, whichever; at most alpha
};

/// Power of Fisher's exact test: all tables whose p is at most alpha (ties within 1e-10 relative).
///
/// Domain    0 <= trials <= 1000 and 0 <= rate <= 1 in both arms, 0 < alpha < 1; else std::domain_error.
/// Returns   power and size; both 0 with an empty arm.
/// Assumes   two independent binomial counts; with trays that differ, count effective cuttings: see sample_size.h.
/// Accuracy  power within 1e-12, size within 1e-9. Time grows with trials1 * trials2.
/// Source    Fisher (1935), J. R. Stat. Soc. 98, 39-82.
[[nodiscard]] ExactPower fisherPower(const PlannedArms& arms, double alpha, FisherSide side);

/// Twice the smaller side (each side held at alpha / 2): the two-sided p of this program. Or tables ordered by the
/// two-sided Fisher p.
enum class BoschlooKind { Less, Greater, Central, Minlike };

/// Power of Boschloo's test: all tables whose p is at most alpha (within 1e-10 absolute).
///
/// Critical regions of this test lie one within the other in the order of Fisher's p, so the largest that holds alpha is
/// found by doubling and halving: some ten maximisations over the shared rate, not one for each table. At 60 per arm
/// about 2 ms, at 500 about 50.
///
/// Domain, returns and assumes as fisherPower().
/// Accuracy  power within 1e-12, size within 1e-9.
/// Source    Boschloo (1970), Stat. Neerl. 24, 1-9; size: Suissa and Shuster (1985), J. R. Stat. Soc. A 148, 317-327.
[[nodiscard]] ExactPower boschlooPower(const PlannedArms& arms, double alpha, BoschlooKind kind);

/// Their power alone, without the maximisation for the size.
[[nodiscard]] double fisherPowerAlone(const PlannedArms& arms, double alpha, FisherSide side);
[[nodiscard]] double boschlooPowerAlone(const PlannedArms& arms, double alpha, BoschlooKind kind);

}  // namespace stats
