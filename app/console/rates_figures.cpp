// SPDX-License-Identifier: MIT
#include "app/console/rates_figures.h"

#include "stats/proportion/agresti_coull_interval.h"
#include "stats/proportion/clopper_pearson_interval.h"
#include "stats/proportion/jeffreys_interval.h"
#include "stats/proportion/wilson_continuity_interval.h"
#include "stats/proportion/wilson_interval.h"
#include "stats/two_proportions/barnard_test.h"
#include "stats/two_proportions/boschloo_test.h"
#include "stats/two_proportions/conditional_odds_ratio.h"
#include "stats/two_proportions/fisher_test.h"
#include "stats/two_proportions/koopman_ratio.h"
#include "stats/two_proportions/miettinen_nurminen_difference.h"
#include "stats/two_proportions/newcombe_difference.h"
#include "stats/two_proportions/probability_of_superiority.h"

namespace console {

namespace {

RateFigures rateFigures(const Counts& counts, double level) {
    const auto [rooted, stuck] = counts;
    RateFigures figures{.counts = counts,
                        .rate = {},
                        .wilson = stats::wilsonInterval(rooted, stuck, level),
                        .wilsonContinuity = stats::wilsonContinuityInterval(rooted, stuck, level),
                        .clopperPearson = stats::clopperPearsonInterval(rooted, stuck, level),
                        .jeffreys = stats::jeffreysInterval(rooted, stuck, level),
                        .agrestiCoull = stats::agrestiCoullInterval(rooted, stuck, level)};
    if (stuck > 0) figures.rate = static_cast<double>(rooted) / stuck;
    return figures;
}

PairFigures pairFigures(const std::vector<RateFigures>& arms, int first, int second, double level) {
    const RateFigures& one = arms[static_cast<std::size_t>(first)];
    const RateFigures& other = arms[static_cast<std::size_t>(second)];
    const stats::TwoCounts counts{one.counts.rooted, one.counts.stuck, other.counts.rooted, other.counts.stuck};
    const stats::FisherTest fisher = stats::fisherTest(counts);
    PairFigures pair{.first = first,
                     .second = second,
                     .difference = {},
                     .newcombe = stats::newcombeDifference(counts, level),
                     .miettinenNurminen = stats::miettinenNurminenDifference(counts, level),
                     .riskRatio = stats::koopmanRatio(counts, level),
                     .oddsRatio = stats::conditionalOddsRatio(counts, level),
                     .fisher = fisher.twoSided,
                     .fisherMid = fisher.midTwoSided,
                     .boschloo = {},
                     .barnard = {},
                     .probabilityFirstBetter = stats::probabilityOfSuperiority(counts)};
    if (one.rate && other.rate) pair.difference = *one.rate - *other.rate;
    if (counts.trials1 + counts.trials2 <= mostForExactTests) {
        pair.boschloo = stats::boschlooTest(counts).central;
        pair.barnard = stats::barnardTest(counts).twoSided;
    }
    return pair;
}

}  // namespace

RatesFigures ratesFigures(const std::vector<Counts>& arms, double level) {
    RatesFigures figures{.level = level, .arms = {}, .pairs = {}};
    for (const Counts& counts : arms) figures.arms.push_back(rateFigures(counts, level));
    const int count = static_cast<int>(arms.size());
    for (int first = 0; first < count; ++first)
        for (int second = first + 1; second < count; ++second)
            figures.pairs.push_back(pairFigures(figures.arms, first, second, level));
    return figures;
}

}  // namespace console
