// SPDX-License-Identifier: MIT
// How many to stick for so many rooted, with a given assurance: from a known rate, from pooled past counts, or from past
// batches that spread. `livesOn` is the known chance of each that rooted to live on after potting, whatever becomes of the
// others; 1 asks for rooted cuttings.
#pragma once

#include <optional>
#include <span>
#include <vector>

#include "stats/overdispersion/beta_binomial_posterior.h"

namespace stats {

struct CountToStick {
    std::optional<int> count;        // absent when more than the cap would be needed
    std::optional<double> achieved;  // probability that `wanted` or more succeed of `count`
};

/// Smallest n with P(Binomial(n, rate * livesOn) >= wanted) >= assurance.
///
/// For a rate that is known, which no grower's is: countForPastRecords() and countForPastBatches() allow for what
/// records leave open, and ask for more.
///
/// Domain    wanted >= 0, 0 <= rate <= 1, 0 < assurance < 1, 0 < livesOn <= 1; else std::domain_error.
/// Returns   0 for 0 wanted; no count at rate 0, or when more than 1 000 000 are needed.
/// Assumes   independent trials.
/// Accuracy  achieved within 1e-12, by the incomplete beta function.
/// Source    the relation of binomial and beta tails: Abramowitz and Stegun (1964), 26.5.24.
[[nodiscard]] CountToStick countForKnownRate(int wanted, double rate, double assurance, double livesOn = 1);

/// The same under the beta-binomial predictive distribution from Jeffreys's posterior Beta(successes + 1/2, failures +
/// 1/2): what `successes` of `trials` in the past promise, if trays did not differ.
///
/// Domain    wanted >= 0, 0 <= successes <= trials, 0 < assurance < 1; else std::domain_error.
/// Returns   as countForKnownRate(). With no success so far it can ask for thousands.
/// Accuracy  achieved within 1e-10.
/// Source    Aitchison and Dunsmore (1975), Statistical Prediction Analysis, ch. 2 and 5.
[[nodiscard]] CountToStick countForPastRecords(int wanted, int successes, int trials, double assurance);

/// The same when trays differ: the rate has the posterior of past batches (shrunk to past.prior while they are few),
/// and the new cuttings are stuck into trays of `traySize`, filled one after another, each with a rate of its own about
/// it. Trays spread more the larger they are, so larger trays ask for more cuttings.
///
/// Simulated: how often 24 of the number advised at assurance 0.9 really root, true rates 0.4, 0.6 and 0.85, trays of
/// 20, spread learnt by pooledSpread() from the past batches alone; in brackets countForPastRecords() on their sums:
///
///     true correlation   0              0.05           0.1            0.2
///     1 past batch       0.995 (0.90)   0.992 (0.85)   0.965 (0.79)   0.935 (0.76)
///     3 past batches     0.991 (0.93)   0.960 (0.84)   0.929 (0.79)   0.902 (0.75)
///     10 past batches    0.961 (0.92)   0.935 (0.85)   0.916 (0.80)   0.900 (0.76)
///
/// Domain    as requirePastBatches(), 0 <= wanted <= 10 000, traySize >= 1, 0 < assurance < 1, 0 < livesOn <= 1; else
///           std::domain_error.
/// Returns   0 for 0 wanted; no count when more than 20 000 are needed.
/// Assumes   past batches and new trays are alike and independent given rate and correlation.
/// Accuracy  achieved within 1e-9, 1e-8 with a prior that is not Jeffreys's: convolution of trays, thinned where not all
///           live on, averaged over ratePosterior() with steps doubled until nothing moves. Time grows with wanted * count: 24 wanted take some
///           milliseconds, 100 some fifty, 500 a second or two.
/// Source    as countForPastRecords(); spread: Skellam (1948), J. R. Stat. Soc. B 10, 257-261; a thinned count: Feller
///           (1968), An Introduction to Probability Theory, vol. 1, 3rd ed., ch. 12 (from memory).
[[nodiscard]] CountToStick countForPastBatches(int wanted, const PastBatches& past, int traySize, double assurance,
                                               double livesOn = 1);

/// Probability that `wanted` or more succeed, and live on, of `count`, stuck into trays of `traySize`: the other way round.
/// Domain    as countForPastBatches(), 0 <= count <= 20 000; else std::domain_error.
[[nodiscard]] double assuranceOfCount(int wanted, int count, const PastBatches& past, int traySize, double livesOn = 1);

/// The same for each of `counts`, which rise: a whole curve in one go through the trays.
///
/// Domain    as assuranceOfCount(); counts in rising order, else std::domain_error.
/// Accuracy  as countForPastBatches(). Fifty counts take about twice as long as the search for one.
[[nodiscard]] std::vector<double> assuranceOfCounts(int wanted, std::span<const int> counts, const PastBatches& past,
                                                    int traySize, double livesOn = 1);

}  // namespace stats
