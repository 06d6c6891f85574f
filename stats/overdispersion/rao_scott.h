// SPDX-License-Identifier: MIT
// How much more the trays of one arm spread than independent trials would: the design effect. Shown, not tested with:
// Rao and Scott's test rejects two or three times too often below about ten trays an arm.
#pragma once

#include <optional>
#include <span>

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

}  // namespace stats
