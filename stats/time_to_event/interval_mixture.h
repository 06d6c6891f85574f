// SPDX-License-Identifier: MIT
// The optimisation behind the nonparametric estimates, stripped of its meaning: masses in a row of columns, and rows
// of data each of which says "it is in one of these neighbouring columns". Only for competing_risks_npmle.h and those
// that estimate many times over.
#pragma once

#include <stop_token>
#include <vector>

namespace stats {

/// `weight` observations that fall into one of the columns first .. last.
struct CoveredColumns {
    int first{};
    int last{};
    double weight{};
};

struct IntervalMixture {
    int columns{};
    std::vector<CoveredColumns> rows;  // each with positive weight, 0 <= first <= last < columns
};

struct MixtureFit {
    std::vector<double> masses;  // one a column; they sum to 1
    double logLikelihood{};
    /// max_j sum_i w_i A_ij / (A p)_i - sum w: no other masses have a log likelihood larger by more than this.
    double gap{};
    bool converged{};
    int iterations{};
};

struct MixtureLimits {
    double wantedGap{1e-12};    // of the sum of weights: iteration ends there, or when the likelihood no longer rises
    double convergedGap{1e-8};  // what counts as converged
    int iterations{500};
};

/// Maximises sum_i w_i log(sum of the masses that row i covers).
///
/// Newton's method on the active columns: the quadratic that touches the log likelihood is maximised exactly under
/// the constraint that no mass is negative, a line search makes sure that the likelihood rises, and columns whose
/// gradient asks for mass join in. Since rows cover neighbouring columns, likelihood and gradient cost one pass over
/// rows and columns, and the second derivatives one pass over rows and pairs of active columns.
///
/// `start` may be empty or hold masses from a similar problem; columns that no row needs are dropped and those that
/// some row does are found.
/// Source    Wang (2007), J. R. Stat. Soc. B 69, 185-198; the certificate is that of Gentleman and Geyer (1994),
///           Biometrika 81, 618-623.
[[nodiscard]] MixtureFit fitIntervalMixture(const IntervalMixture& mixture, std::vector<double> start,
                                            const MixtureLimits& limits, const std::stop_token& stop);

}  // namespace stats
