// SPDX-License-Identifier: MIT
// Smooth curves for the days to root of those that root: log T = mu + sigma W, with W one of three distributions. The
// fits are in interval_censored_fit.h, cure_mixture.h and speed_comparison.h.
#pragma once

namespace stats {

/// The distribution of the days. LogNormal: W is standard normal. LogLogistic: standard logistic. Weibull: the smallest
/// extreme value, so that the Weibull's shape is 1 / sigma and its scale exp(mu).
enum class SpeedShape { Weibull, LogNormal, LogLogistic };

struct SpeedParameters {
    double mu{};
    double logSigma{};
};

/// Why there is no curve. Each is an answer to be shown in words; nothing else is put in its place.
enum class NoSpeedFit {
    NobodyRooted,     // also when there are no rows at all
    OneCheckOnly,     // one day says how many, and nothing of how fast
    AllAtFirstCheck,  // everything that rooted had done so when first looked at
    TooFewIntervals,  // rooting seen in fewer than three distinct intervals, or all intervals share a day: a curve that
                      // jumps on one day fits best
    RootedOnDayZero,  // a logarithm has no room for it
    LikelihoodIsFlat,  // no maximum was found: it keeps rising towards an edge, or is as good as level
};

/// P(T <= day).
///
/// Domain    mu and logSigma finite, day >= 0 (may be infinite); else std::domain_error.
/// Returns   0 on day 0, 1 at infinity.
/// Accuracy  1e-14 relative to the smaller of the share and its complement, times |log day - mu| / sigma.
/// Source    Kalbfleisch and Prentice (2002), The Statistical Analysis of Failure Time Data, 2nd ed., section 2.2.
[[nodiscard]] double speedShare(SpeedShape shape, const SpeedParameters& parameters, double day);

/// The day by which that share of those that root has done so.
///
/// Domain    0 < share < 1, mu and logSigma finite; else std::domain_error.
/// Returns   positive and finite; a day above 1e304 is given as 1e304.
[[nodiscard]] double speedQuantile(SpeedShape shape, const SpeedParameters& parameters, double share);

/// W's quantile: log(speedQuantile) = mu + sigma times this. 0 < share < 1, else std::domain_error.
[[nodiscard]] double standardSpeedQuantile(SpeedShape shape, double share);

}  // namespace stats
