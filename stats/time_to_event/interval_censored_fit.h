// SPDX-License-Identifier: MIT
// A smooth curve for days known only between checks, where all would root in the end. Where some never will, which is
// the rule with cuttings, use cure_mixture.h: this one then tells of a median that is far too late.
#pragma once

#include <optional>
#include <span>
#include <vector>

#include "stats/interval.h"
#include "stats/time_to_event/observation.h"
#include "stats/time_to_event/speed_shape.h"

namespace stats {

/// How sure the speed is.
struct SpeedUncertainty {
    double standardErrorOfMu{};
    double standardErrorOfLogSigma{};
    double standardErrorOfLogMedian{};
    Interval medianLimits;  // delta method on the log scale
};

struct IntervalCensoredEstimate {
    SpeedShape shape{};
    SpeedParameters parameters;
    double medianDay{};
    SpeedUncertainty asCounted;               // from the observed information: each cutting on its own
    std::optional<SpeedUncertainty> byBatch;  // whole-batch covariance; absent without at least three differing batches
    double logLikelihood{};
    double akaike{};  // 4 - 2 logLikelihood: the smaller, the better the shape fits
    int iterations{};
};

struct IntervalCensoredFit {
    std::optional<IntervalCensoredEstimate> estimate;
    std::optional<NoSpeedFit> whyNot;  // present exactly where the estimate is not
};

/// Maximum likelihood for log T = mu + sigma W. A row of cause 1 contributes P(after < T <= by), the density of T when
/// after = by; one of cause 0, P(T > after).
///
/// Losses are not censoring, and the rows decide: see the top of cure_mixture.h.
///
/// Domain    as requireObservations(), and no cause 2; 0 < level < 1; else std::domain_error. No rows is allowed.
/// Returns   no estimate, with the reason, where there is none; never infinite. The logarithm of the median's limits is
///           cut off at +-700.
/// Assumes   check days do not depend on what would have been found. asCounted: independent cuttings. byBatch: only
///           independent batches, and enough of them (from memory, twenty to forty before its level can be trusted);
///           (sum H)^-1 (sum over batches of s s') (sum H)^-1 with batch scores s, Student's t on batches - 1 degrees
///           of freedom, no further small-sample factor.
/// Accuracy  parameters to 1e-9, standard errors to 1e-8 relative (exact second derivatives).
/// Source    Lawless (2003), Statistical Models and Methods for Lifetime Data, 2nd ed., sections 5.1 and 6.1; the
///           whole-batch covariance: White (1982), Econometrica 50, 1-25; Liang and Zeger (1986), Biometrika 73, 13-22;
///           Freedman (2006), Am. Stat. 60, 299-302.
[[nodiscard]] IntervalCensoredFit fitIntervalCensored(std::span<const Observation> rows, SpeedShape shape,
                                                      double level = 0.95);
/// The same with each inner vector one batch, so that byBatch can be had.
[[nodiscard]] IntervalCensoredFit fitIntervalCensored(std::span<const std::vector<Observation>> batches,
                                                      SpeedShape shape, double level = 0.95);

/// P(T <= day) by the fitted curve. day >= 0, else std::domain_error.
[[nodiscard]] double fittedShare(const IntervalCensoredEstimate& estimate, double day);

}  // namespace stats
