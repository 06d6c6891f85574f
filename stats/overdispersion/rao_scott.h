// SPDX-License-Identifier: MIT
// How much more the trays of one arm spread than independent trials would: the design effect. Shown, not tested with:
// Rao and Scott's test, here for comparison, rejects two or three times too often below about ten trays an arm.
#pragma once

#include <optional>
#include <span>
#include <vector>

#include "stats/overdispersion/tray.h"

namespace stats {

struct DesignEffect {
    std::optional<double> rate;              // absent without trials
    int trays{};                             // with trials
    long long trials{};                      // of them all
    std::optional<double> ratioVariance;     // of the rate, seen between trays; absent with one tray
    std::optional<double> binomialVariance;  // p (1 - p) / trials
    std::optional<double> designEffect;      // their ratio; absent with one tray, or when all or none succeeded
    std::optional<double> effectiveTrials;   // trials / designEffect; absent too when the design effect is 0
    std::optional<double> effectiveSuccesses;
};

/// The design effect of one arm in several trays.
///
/// m / (m - 1) sum(y - n p)^2 / (sum n)^2 over p (1 - p) / sum n, p being the pooled rate of the m trays. Below 1
/// when trays are more alike than chance would have them.
///
/// Domain    0 <= successes <= trials in each tray, else std::domain_error. Empty trays are left out; no trays at all
///           is allowed.
/// Returns   one tray, or all or none succeeded: no design effect (it is not 1, it is not known). Equal trays: 0.
/// Assumes   trays are independent of each other.
/// Accuracy  1e-9 relative.
/// Source    Rao and Scott (1992), Biometrics 48, 577-585.
[[nodiscard]] DesignEffect raoScottDesignEffect(std::span<const Tray> trays);

struct RaoScottTest {
    std::vector<DesignEffect> arms;            // in the order given, those without trials too
    std::optional<double> chiSquare;           // on effective counts; absent where an arm has no effective number
    std::optional<double> p;                   // absent likewise
    std::optional<double> pooledDesignEffect;  // absent where an arm has no design effect
    std::optional<double> pooledChiSquare;     // that of the plain counts over pooledDesignEffect
    std::optional<double> pooledP;
    int degreesOfFreedom{};  // arms with trials less 1
};

/// Pearson's chi-square of several arms on their effective counts, and that of the plain counts over one design effect
/// for all. Shown beside the others, never a verdict: with 20 cuttings a tray and a correlation of 0.10 it rejects
/// 14.5, 12.4, 9.6, 7.3 % of the time at 5 % with 2, 3, 4, 6 trays an arm (simulated, 3000 runs).
///
/// pooledDesignEffect = sum((1 - n/N) p (1 - p) deff) / ((k - 1) P (1 - P)), k arms.
///
/// Domain    0 <= successes <= trials in each tray, else std::domain_error. Empty trays and arms are left out.
/// Returns   what cannot be had is absent, as beside each field; fewer than two arms with trials: all, and 0 degrees of
///           freedom.
/// Assumes   trays are independent of each other, and there are many: ten an arm at the least.
/// Accuracy  1e-9 relative.
/// Source    Rao and Scott (1992), Biometrics 48, 577-585, equations 2 to 6.
[[nodiscard]] RaoScottTest raoScottTest(std::span<const std::vector<Tray>> arms);

}  // namespace stats
