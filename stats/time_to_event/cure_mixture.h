// SPDX-License-Identifier: MIT
// Who roots, and how fast, as two figures: a share pi roots at all, and the days of those follow a smooth curve. The
// curve that supposes nothing of the kind is competing_risks_npmle.h.
//
// Losses are not censoring: what a lost cutting would have done nobody knows, and the caller decides by the rows.
//   - Row of cause 0 that ends at the last check before the loss: the lost would have rooted as the others did. pi is
//     then the share that would root if nothing were lost, and it is too high where losses are the weak ones.
//   - Row of cause 0 that ends at the batch's last check: the lost are known never to root. pi is the share of all
//     stuck that roots, losses counting against it, as a grower counts; the speed hardly changes.
//   - Left out: only what survived is described.
// Say which one was used, and show both of the first two where they differ by more than the interval does.
#pragma once

#include <optional>
#include <span>
#include <vector>

#include "stats/interval.h"
#include "stats/time_to_event/interval_censored_fit.h"

namespace stats {

/// How sure the share that roots is. Absent figures: pi is on its boundary.
struct RootingShareUncertainty {
    std::optional<double> standardErrorOfLogit;
    std::optional<double> standardError;
    std::optional<Interval> limits;  // formed on the logit scale
};

struct CureMixtureEstimate {
    SpeedShape shape{};
    double rootingShare{};  // pi
    SpeedParameters parameters;
    double medianDay{};      // of those that root
    bool isOnBoundary{};     // pi = 1: everything roots in the end, as far as these rows tell
    SpeedUncertainty speed;  // as counted: each cutting on its own
    RootingShareUncertainty share;
    std::optional<SpeedUncertainty> speedByBatch;  // both absent without enough differing batches
    std::optional<RootingShareUncertainty> shareByBatch;
    double logLikelihood{};
    double akaike{};  // 6 - 2 logLikelihood (4 - 2 logLikelihood on the boundary)
    int iterations{};
};

struct CureMixtureFit {
    std::optional<CureMixtureEstimate> estimate;
    std::optional<NoSpeedFit> whyNot;  // present exactly where the estimate is not
};

/// Maximum likelihood. A row of cause 1 contributes pi (G(by) - G(after)), one of cause 0 contributes 1 - pi G(after).
///
/// Domain    as requireObservations(), and no cause 2; 0 < level < 1; else std::domain_error. No rows is allowed.
/// Returns   no estimate, with the reason, where there is none. pi = 1 is an answer: isOnBoundary, the share without
///           standard error or limits, the speed that of fitIntervalCensored(). The logarithm of the median's limits
///           is cut off at +-700. byBatch needs one batch more than the fit has free parameters.
/// Assumes   as fitIntervalCensored(), and that cuttings were watched long enough for the curve to level off: pi is
///           otherwise told by the shape alone, which the standard error shows only in part. Compare the three shapes
///           (akaike), and the curve with the nonparametric one.
/// Accuracy  logit pi, mu and log sigma to 1e-9, standard errors to 1e-8 relative (exact observed information). The
///           highest maximum found from four starts, and on the boundary.
/// Source    Boag (1949), J. R. Stat. Soc. B 11, 15-53; Farewell (1982), Biometrics 38, 1041-1046; the boundary: Maller
///           and Zhou (1996), Survival Analysis with Long-Term Survivors, chapter 5.
[[nodiscard]] CureMixtureFit fitCureMixture(std::span<const Observation> rows, SpeedShape shape, double level = 0.95);
/// The same with each inner vector one batch, so that the figures by batch can be had.
[[nodiscard]] CureMixtureFit fitCureMixture(std::span<const std::vector<Observation>> batches, SpeedShape shape,
                                            double level = 0.95);

/// Share of all that has rooted by then, pi G(day). day >= 0 (may be infinite), else std::domain_error.
[[nodiscard]] double fittedShare(const CureMixtureEstimate& estimate, double day);

}  // namespace stats
