// SPDX-License-Identifier: MIT
// Whatever is allowed in gives figures that can be shown: never "not a number", infinite only where a header says so.
#include <gtest/gtest.h>

#include <cmath>
#include <optional>
#include <vector>

#include "stats/overdispersion/beta_binomial.h"
#include "stats/overdispersion/rao_scott.h"
#include "stats/overdispersion/tray_interval.h"
#include "stats/overdispersion/tray_permutation_test.h"
#include "stats/overdispersion/tray_t_test.h"
#include "stats/strata/breslow_day_tarone_test.h"
#include "stats/strata/cochran_mantel_haenszel_test.h"
#include "stats/strata/mantel_haenszel.h"
#include "stats/time_to_event/cluster_bootstrap.h"
#include "stats/time_to_event/curve_permutation_test.h"

namespace {

using stats::SeededRandom;

constexpr int kInputs = 10'000;

bool isShown(std::optional<double> value) {
    return !value || std::isfinite(*value);
}
bool isShare(std::optional<double> value) {
    return !value || (*value >= 0 && *value <= 1);
}
bool isOrdered(const stats::Interval& interval) {
    return interval.low <= interval.high;
}

// Mostly small, often 0 or all, now and then huge.
int someTrials(SeededRandom& random) {
    const auto kind = random.below(20);
    if (kind == 0) return 0;
    if (kind == 1) return static_cast<int>(random.below(2'000'000'000));
    return static_cast<int>(random.below(30));
}
int someSuccesses(int trials, SeededRandom& random) {
    const auto kind = random.below(5);
    if (kind == 0) return 0;
    if (kind == 1) return trials;
    return static_cast<int>(random.below(static_cast<std::uint64_t>(trials) + 1));
}

TEST(RandomInputs, OfStrataGiveFiguresThatCanBeShown) {
    SeededRandom random(91);
    for (int run = 0; run < kInputs; ++run) {
        std::vector<stats::Stratum> strata(random.below(5));
        for (auto& stratum : strata) {
            stratum.trials1 = someTrials(random);
            stratum.successes1 = someSuccesses(stratum.trials1, random);
            stratum.trials2 = someTrials(random);
            stratum.successes2 = someSuccesses(stratum.trials2, random);
        }
        const auto ratio = stats::mantelHaenszelOddsRatio(strata, 0.95);
        ASSERT_TRUE(!ratio.estimate || *ratio.estimate >= 0) << run;
        ASSERT_TRUE(isShown(ratio.standardErrorOfLog) && ratio.limits.low >= 0 && isOrdered(ratio.limits)) << run;
        const auto difference = stats::mantelHaenszelDifference(strata, 0.95);
        ASSERT_TRUE(isShown(difference.estimate) && isShown(difference.standardError)) << run;
        ASSERT_TRUE(difference.limits.low >= -1 && difference.limits.high <= 1 && isOrdered(difference.limits)) << run;
        const auto cmh = stats::cochranMantelHaenszelTest(strata);
        ASSERT_TRUE(isShown(cmh.chiSquare) && isShare(cmh.p) && isShare(cmh.correctedP) && cmh.p <= cmh.correctedP)
            << run;
        const auto agreement = stats::breslowDayTaroneTest(strata);
        ASSERT_TRUE(isShown(agreement.chiSquare) && isShare(agreement.p) && isShare(agreement.taroneP)) << run;
    }
}

std::vector<stats::Tray> someTrays(SeededRandom& random) {
    std::vector<stats::Tray> trays(random.below(5));
    for (auto& tray : trays) {
        tray.trials = random.below(200) == 0 ? 600 : static_cast<int>(random.below(24));
        tray.successes = someSuccesses(tray.trials, random);
    }
    return trays;
}

TEST(RandomInputs, OfTraysGiveFiguresThatCanBeShown) {
    SeededRandom random(92);
    for (int run = 0; run < kInputs; ++run) {
        const auto first = someTrays(random), second = someTrays(random);
        const auto effect = stats::raoScottDesignEffect(first);
        ASSERT_TRUE(isShare(effect.rate) && isShown(effect.designEffect) && isShown(effect.effectiveTrials)) << run;
        const auto interval = stats::trayInterval(first, 0.9);
        ASSERT_TRUE(isShare(interval.limits.low) && isShare(interval.limits.high) && isOrdered(interval.limits)) << run;
        ASSERT_TRUE(!interval.estimate ||
                    (interval.limits.low <= *interval.estimate && *interval.estimate <= interval.limits.high));
        const auto t = stats::trayTTest(first, second);
        ASSERT_TRUE(isShown(t.difference) && isShown(t.t) && isShare(t.p) && (!t.limits || isOrdered(*t.limits)))
            << run;
        const auto permutation = stats::trayPermutationTest(first, second, random, 100, 50);
        ASSERT_TRUE(isShare(permutation.statistic) && permutation.p > 0 && permutation.p <= 1) << run;
    }
}

TEST(RandomInputs, OfTraysHaveABetaBinomialThatCanBeShown) {
    SeededRandom random(93);
    for (int run = 0; run < kInputs; ++run) {
        const auto trays = someTrays(random);
        const auto fit = stats::fitBetaBinomial(trays);
        ASSERT_TRUE(isShare(fit.mean) && isShare(fit.correlation) && isShare(fit.p)) << run;
        ASSERT_TRUE(isShown(fit.standardErrorOfMean) && isShown(fit.standardErrorOfCorrelation)) << run;
        ASSERT_TRUE(std::isfinite(fit.logLikelihood) && fit.logLikelihood <= 1e-9) << run;
        ASSERT_TRUE(fit.converged) << run;
        if (run % 10 != 0) continue;
        const auto comparison =
            stats::compareBetaBinomial(std::vector<std::vector<stats::Tray>>{trays, someTrays(random)});
        ASSERT_TRUE(isShare(comparison.p) && std::isfinite(comparison.likelihoodRatio)) << run;
    }
}

std::vector<stats::Observation> someObservations(SeededRandom& random) {
    std::vector<stats::Observation> observations(random.below(9));
    for (auto& one : observations) {
        one.cause = static_cast<int>(random.below(3));
        one.after = static_cast<double>(random.below(20)) / (random.below(3) == 0 ? 3 : 1);
        one.weight = random.below(10) == 0   ? 0
                     : random.below(10) == 0 ? 1e6 * random.uniform()
                                             : 1.0 + static_cast<double>(random.below(9));
        if (one.cause != 0) one.by = one.after + static_cast<double>(random.below(8));
    }
    return observations;
}

TEST(RandomInputs, OfDaysGiveCurvesThatCanBeShown) {
    SeededRandom random(94);
    for (int run = 0; run < kInputs; ++run) {
        const auto observations = someObservations(random);
        const auto estimate = stats::competingRisksNpmle(observations);
        ASSERT_TRUE(estimate.converged && std::isfinite(estimate.logLikelihood) && isShare(estimate.neither)) << run;
        double sum = estimate.neither;
        for (const auto& curve : {estimate.cause1, estimate.cause2}) {
            for (const auto& support : curve) {
                ASSERT_TRUE(support.mass > 0 && support.mass <= 1 + 1e-12 && support.left <= support.right) << run;
                sum += support.mass;
            }
        }
        ASSERT_NEAR(sum, 1, 1e-7) << run;
        const auto day = stats::quantileDay(estimate.cause1, 0.5, stats::ShareOf::ThoseWithTheEvent);
        ASSERT_TRUE(!day || (day->after <= day->interpolated && day->interpolated <= day->by)) << run;
    }
}

TEST(RandomInputs, OfBatchesGiveBandsAndPThatCanBeShown) {
    SeededRandom random(95);
    for (int run = 0; run < kInputs / 10; ++run) {
        std::vector<std::vector<stats::Observation>> batches;
        std::vector<stats::LabelledBatch> labelled;
        for (int i = 0; i < 4; ++i) {
            batches.push_back(someObservations(random));
            labelled.push_back({batches.back(), random.below(2) == 0, static_cast<int>(random.below(2))});
        }
        const stats::BootstrapQuestion question{
            .quantiles = {{0.5, stats::ShareOf::Everyone}}, .days = {0, 5, 12}, .replicates = 20};
        if (const auto answer = stats::clusterBootstrap(batches, question, random)) {
            for (const auto& band : answer->bands1)
                ASSERT_TRUE(isShare(band.low) && isShare(band.high) && isOrdered(band)) << run;
            for (const auto& band : answer->bands2)
                ASSERT_TRUE(isShare(band.low) && isShare(band.high) && isOrdered(band)) << run;
            ASSERT_TRUE(isOrdered(answer->quantiles[0].limits) && isShare(answer->quantiles[0].shareReached)) << run;
        }
        if (const auto test = stats::curvePermutationTest(labelled, 5, random)) {
            ASSERT_TRUE(std::isfinite(test->statistic) && test->p > 0 && test->p <= 1) << run;
        }
    }
}

}  // namespace
