// SPDX-License-Identifier: MIT
// Which of two arms is quicker, whatever each one's strike rate. By a curve of given shape here; without one, by
// speedPermutationTest() in curve_permutation_test.h.
#pragma once

#include <array>
#include <optional>
#include <span>
#include <vector>

#include "stats/time_to_event/cure_mixture.h"

namespace stats {

/// One arm of the joint fit.
struct ArmSpeed {
    double rootingShare{};
    bool isOnBoundary{};             // rootingShare is 1
    std::optional<Interval> limits;  // of rootingShare; absent on the boundary
    double medianDay{};              // of those that root
    Interval medianLimits;
};

struct BatchwiseRatio {
    double standardErrorOfLog{};
    Interval limits;
    double p{1.0};  // of equal speed, Student's t on batches - 2 degrees of freedom
};

struct SpeedComparisonEstimate {
    SpeedShape shape{};
    std::array<ArmSpeed, 2> arms;
    double logSigma{};  // common to both arms
    double
        ratio{};  // arm 1's median day over arm 2's; below 1 where arm 1 is quicker. That of every other quantile too
    double standardErrorOfLogRatio{};
    Interval ratioLimits;
    std::optional<BatchwiseRatio> byBatch;  // whole-batch covariance; absent without enough differing batches
    double logLikelihood{};
    double equalSpeedLogLikelihood{};
    double likelihoodRatio{};  // twice the difference
    double p{1.0};             // chi-square, 1 degree of freedom; as counted, so too small where batches differ
    int iterations{};
};

struct SpeedComparison {
    std::optional<SpeedComparisonEstimate> estimate;
    std::optional<NoSpeedFit> whyNot;  // present exactly where the estimate is not
    int armWithout{};                  // the arm (1 or 2) that this is about; 0: both together
};

/// Two cure mixtures with an own pi and an own mu in each arm and one sigma, against the same with one mu.
///
/// Domain    each inner vector is one batch, as requireObservations(), and no cause 2; 0 < level < 1; else
///           std::domain_error. Arms without rows are allowed.
/// Returns   no estimate, with the reason and the arm, where either arm alone has none, or the joint likelihood is
///           flat. Logarithms of limits are cut off at +-700.
/// Assumes   one sigma and one shape for both: the arms' days differ by a factor. Otherwise as fitCureMixture(). p and
///           ratioLimits take cuttings for independent; byBatch does not.
/// Accuracy  as fitCureMixture().
/// Source    Farewell (1982), Biometrics 38, 1041-1046; the likelihood ratio: Wilks (1938), Ann. Math. Stat. 9, 60-62.
[[nodiscard]] SpeedComparison compareSpeed(std::span<const std::vector<Observation>> first,
                                           std::span<const std::vector<Observation>> second, SpeedShape shape,
                                           double level = 0.95);

}  // namespace stats
