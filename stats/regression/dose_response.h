// SPDX-License-Identifier: MIT
// Strike against the strength of a rooting hormone: a hill on log dose, and the dose at its top.
//
// Untreated trays (dose 0) have no logarithm. They enter as a level of their own: a rate beside the curve, which they
// do not bend, but they do help to judge how much trays spread. Nothing is added to doses before the logarithm: what is
// added would choose the answer.
#pragma once

#include <optional>
#include <span>
#include <vector>

#include "stats/interval.h"
#include "stats/regression/binomial_rows.h"

namespace stats {

struct DoseTray {
    double dose{};  // 0 untreated; any unit, the same throughout
    int successes{};
    int trials{};
};

enum class DoseEstimator { MaximumLikelihood, Firth };

enum class Peak {
    NoFit,       // see DoseResponse::problem
    Inside,      // between the lowest and the highest dose tried
    None,        // the curve does not bend down: no dose is best
    BelowDoses,  // its top is at or below the lowest dose tried
    AboveDoses,  // its top is at or above the highest dose tried
};

enum class PeakLimits {
    Unknown,    // no peak inside; or, with spread, no degree of freedom to see it by
    Bounded,    // `limits` has them; they may lie outside the doses tried
    Unbounded,  // the curve may as well be straight: no dose can be excluded
};

/// What there is to say of the peak with one kind of standard error.
struct PeakAnswer {
    PeakLimits kind{PeakLimits::Unknown};
    std::optional<Interval> limits;    // of the best dose; 0 or infinite where beyond what a double holds
    std::optional<double> curvatureP;  // two-sided, that the curve has no bend; absent without a fit or its spread
};

struct DoseResponse {
    FitProblem problem{FitProblem::NoTrials};  // None where there is a curve
    std::vector<double> coefficients;          // b0, b1, b2: log odds = b0 + b1 L + b2 L^2, L = log dose
    Peak peak{Peak::NoFit};
    std::optional<double> bestDose;       // exp(-b1 / (2 b2)); only where the peak is inside
    std::optional<double> bestRate;       // the fitted rate there
    std::optional<double> untreatedRate;  // of all trays with dose 0; absent without
    PeakAnswer asCounted;                 // each cutting for itself
    PeakAnswer withSpread;                // standard errors times sqrt(dispersion), Student's quantile
    double dispersion{1.0};               // Pearson's chi-square over degreesOfFreedom, at least 1
    int degreesOfFreedom{};               // trays less levels fitted; 0: spread can't be seen, dispersion is 1
    double centre{};                      // of log dose: what `fit` is about
    LogisticFit fit;                      // of L - centre and its square; exists = false where there is no curve
};

/// Logistic regression of strike on log dose with a quadratic term.
///
/// Domain    0 <= successes <= trials; dose 0 or from 1e-100 to 1e100; 0 < level < 1; else std::domain_error. Trays
///           without trials are left out.
/// Returns   problem Collinear with fewer than three different doses above 0; AllOrNone or Separated (maximum
///           likelihood only) where some dose rooted all or none and so pulls the curve to infinity: ask for Firth's
///           estimator by name then, it is never put in unasked. The rest as beside each field.
/// Assumes   trials, or with spread trays, are independent; log odds are a parabola in log dose. The spread is taken to
///           be the same in proportion at all doses.
/// Accuracy  1e-7 relative.
/// Source    Cox (1958), J. R. Stat. Soc. B 20, 215-242; Fieller (1954), J. R. Stat. Soc. B 16, 175-185; dispersion:
///           McCullagh and Nelder (1989), Generalized Linear Models, 2nd ed., section 4.5.
[[nodiscard]] DoseResponse doseResponse(std::span<const DoseTray> trays, double level,
                                        DoseEstimator estimator = DoseEstimator::MaximumLikelihood);

struct RateAtDose {
    double rate{};
    Interval asCounted;
    std::optional<Interval> withSpread;  // absent where spread can't be seen
};

/// A point of the curve with its interval, for drawing. Absent where there is no curve.
///
/// Domain    dose from 1e-100 to 1e100, 0 < level < 1; else std::domain_error.
[[nodiscard]] std::optional<RateAtDose> rateAtDose(const DoseResponse& response, double dose, double level);

}  // namespace stats
