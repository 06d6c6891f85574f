// SPDX-License-Identifier: MIT
#include "core/comparison/pair_of_arms.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <tuple>

#include "core/comparison/as_good_as.h"
#include "core/comparison/speed.h"
#include "core/comparison/verdict.h"
#include "stats/overdispersion/tray_permutation_test.h"
#include "stats/overdispersion/tray_t_test.h"
#include "stats/overdispersion/tray_weighted_t_test.h"
#include "stats/strata/breslow_day_tarone_test.h"
#include "stats/strata/cochran_mantel_haenszel_test.h"
#include "stats/strata/mantel_haenszel.h"
#include "stats/time_to_event/curve_permutation_test.h"
#include "stats/two_proportions/barnard_test.h"
#include "stats/two_proportions/boschloo_test.h"
#include "stats/two_proportions/conditional_odds_ratio.h"
#include "stats/two_proportions/fisher_test.h"
#include "stats/two_proportions/koopman_ratio.h"
#include "stats/two_proportions/miettinen_nurminen_difference.h"
#include "stats/two_proportions/newcombe_difference.h"
#include "stats/two_proportions/probability_of_superiority.h"

namespace core {
namespace {

Limits limitsFrom(const stats::Interval& interval) {
    return {.low = interval.low, .high = interval.high};
}

void compareCounts(const stats::TwoCounts& counts, const PairSettings& settings, Pair& pair) {
    if (counts.trials1 > 0 && counts.trials2 > 0) {
        const double value = static_cast<double>(counts.successes1) / counts.trials1 -
                             static_cast<double>(counts.successes2) / counts.trials2;
        pair.difference =
            PairDifference{.value = value,
                           .newcombe = limitsFrom(stats::newcombeDifference(counts, settings.level)),
                           .miettinenNurminen = limitsFrom(stats::miettinenNurminenDifference(counts, settings.level)),
                           .ofBatches = {},
                           .withSpread = {}};
    }
    const stats::RatioEstimate ratio = stats::koopmanRatio(counts, settings.level);
    pair.riskRatio = ratio.estimate;
    pair.koopman = limitsFrom(ratio.limits);
    const stats::RatioEstimate odds = stats::conditionalOddsRatio(counts, settings.level);
    pair.oddsRatio = odds.estimate;
    pair.oddsRatioExact = limitsFrom(odds.limits);
    const stats::FisherTest fisher = stats::fisherTest(counts);
    pair.fisher = fisher.twoSided;
    pair.fisherMid = fisher.midTwoSided;
    pair.probabilityFirstBetter = stats::probabilityOfSuperiority(counts);
    pair.exactTestsLeftOut = counts.trials1 + counts.trials2 > settings.exactTrials;
    if (pair.exactTestsLeftOut) return;
    pair.boschloo = stats::boschlooTest(counts).central;
    pair.barnard = stats::barnardTest(counts).twoSided;
}

void addToStratum(stats::Stratum& stratum, const HorizonFate& fate, bool isFirst) {
    (isFirst ? stratum.successes1 : stratum.successes2) += fate.rooted;
    (isFirst ? stratum.trials1 : stratum.trials2) += fate.assessed;
}

std::string plantName(const PairSettings& settings, PlantId plant) {
    const auto found = settings.plantNames->find(plant);
    return found == settings.plantNames->end() ? "not recorded" : found->second;
}

std::vector<BySpecies> bySpecies(const ArmRecords& first, const ArmRecords& second, const PairSettings& settings) {
    std::map<PlantId, stats::Stratum> ofPlant;
    for (const ArmRecords* records : {&first, &second})
        for (const Course& course : records->courses)
            addToStratum(ofPlant[course.record->batch.plant], course.fate, records == &first);
    std::vector<BySpecies> species;
    for (const auto& [plant, counts] : ofPlant) {
        BySpecies row{.species = plantName(settings, plant),
                      .firstRooted = counts.successes1,
                      .firstAssessed = counts.trials1,
                      .secondRooted = counts.successes2,
                      .secondAssessed = counts.trials2,
                      .difference = {},
                      .limits = limitsFrom(stats::miettinenNurminenDifference(
                          {counts.successes1, counts.trials1, counts.successes2, counts.trials2}, settings.level))};
        if (counts.trials1 > 0 && counts.trials2 > 0)
            row.difference = static_cast<double>(counts.successes1) / counts.trials1 -
                             static_cast<double>(counts.successes2) / counts.trials2;
        species.push_back(std::move(row));
    }
    std::stable_sort(species.begin(), species.end(),
                     [](const BySpecies& a, const BySpecies& b) { return a.species < b.species; });
    return species;
}

Pooled pooledOver(const ArmRecords& first, const ArmRecords& second, const PairSettings& settings) {
    // A block is one of its trial; without a block, all batches of a plant are one stratum.
    std::map<std::tuple<PlantId, TrialId, std::string_view>, stats::Stratum> ofKey;
    for (const ArmRecords* records : {&first, &second}) {
        for (const Course& course : records->courses) {
            const Batch& batch = course.record->batch;
            const TrialId trial = batch.block.empty() ? TrialId{} : batch.trial;
            addToStratum(ofKey[{batch.plant, trial, batch.block}], course.fate, records == &first);
        }
    }
    std::vector<stats::Stratum> strata;
    std::vector<StratumCounts> counts;
    for (const auto& [key, stratum] : ofKey) {
        if (stratum.trials1 == 0 || stratum.trials2 == 0) continue;
        strata.push_back(stratum);
        std::string name = plantName(settings, std::get<PlantId>(key));
        if (const auto block = std::get<std::string_view>(key); !block.empty()) name += ", " + std::string(block);
        counts.push_back({.name = std::move(name),
                          .firstRooted = stratum.successes1,
                          .firstAssessed = stratum.trials1,
                          .secondRooted = stratum.successes2,
                          .secondAssessed = stratum.trials2});
    }
    const auto odds = stats::mantelHaenszelOddsRatio(strata, settings.level);
    const auto difference = stats::mantelHaenszelDifference(strata, settings.level);
    return {.strata = static_cast<int>(strata.size()),
            .counts = std::move(counts),
            .oddsRatio = odds.estimate,
            .oddsRatioLimits = limitsFrom(odds.limits),
            .riskDifference = difference.estimate,
            .riskDifferenceLimits = limitsFrom(difference.limits),
            .cmhP = stats::cochranMantelHaenszelTest(strata).p,
            .agreementP = stats::breslowDayTaroneTest(strata).taroneP,
            .oddsRatioWithSpread = {},
            .riskDifferenceWithSpread = {}};
}

// Distances from the estimate times the root of the design effect: a Rao-Scott correction with one common effect.
void allowForSpread(double designEffect, Pooled& pooled) {
    const double wider = std::sqrt(std::max(1.0, designEffect));
    pooled.oddsRatioWithSpread = pooled.oddsRatioLimits;
    if (pooled.oddsRatio && *pooled.oddsRatio > 0 && std::isfinite(*pooled.oddsRatio)) {
        const double odds = *pooled.oddsRatio;
        pooled.oddsRatioWithSpread = {.low = odds * std::pow(pooled.oddsRatioLimits.low / odds, wider),
                                      .high = odds * std::pow(pooled.oddsRatioLimits.high / odds, wider)};
    }
    pooled.riskDifferenceWithSpread = pooled.riskDifferenceLimits;
    if (pooled.riskDifference) {
        const double difference = *pooled.riskDifference;
        const Limits& counted = pooled.riskDifferenceLimits;
        pooled.riskDifferenceWithSpread = {.low = std::max(-1.0, difference - wider * (difference - counted.low)),
                                           .high = std::min(1.0, difference + wider * (counted.high - difference))};
    }
}

// The last day on which any cutting of the arm was looked at: beyond it its curve says nothing.
int lastLookOf(const ArmRecords& records) {
    int last = 0;
    for (const Course& course : records.courses)
        if (!course.looks.empty()) last = std::max(last, course.looks.back().day);
    return last;
}

void compareCurves(const ArmRecords& first, const ArmRecords& second, const PairSettings& settings,
                   const std::stop_token& stop, Pair& pair) {
    const int until = std::min(lastLookOf(first), lastLookOf(second));
    // With one batch in an arm no rearrangement could show anything: the test would give 1 whatever was seen.
    if (until < 1 || first.courses.size() < 2 || second.courses.size() < 2 || settings.permutations < 1) return;
    std::map<PlantId, int> stratumOf;
    std::vector<stats::LabelledBatch> batches;
    for (const ArmRecords* records : {&first, &second}) {
        for (const Course& course : records->courses) {
            const auto next = static_cast<int>(stratumOf.size());
            const int stratum = stratumOf.emplace(course.record->batch.plant, next).first->second;
            batches.push_back(
                {.observations = observationsOf(course), .isInFirstArm = records == &first, .stratum = stratum});
        }
    }
    stats::SeededRandom random(settings.seed);
    const auto test = stats::curvePermutationTest(batches, settings.permutations, random, until, stop);
    if (!test || test->wasStopped) return;
    if (test->isExact && test->permutations <= 1) return;  // no plant in both arms: nothing could be dealt otherwise
    pair.curvesP = test->p;
    pair.curvesApart =
        CurvesApart{.area = test->statistic, .until = until, .dealings = test->permutations, .isExact = test->isExact};
}

void compareBatches(const ArmRecords& first, const ArmRecords& second, const PairSettings& settings,
                    const std::stop_token& stop, Pair& pair) {
    const auto trays1 = first.trays(), trays2 = second.trays();
    const std::size_t fewest = std::min(trays1.size(), trays2.size());
    const stats::TrayTTest tTest = stats::trayGuardedTTest(trays1, trays2, settings.level);
    if (pair.difference) pair.difference->ofBatches = stats::trayTTest(trays1, trays2, settings.level).difference;
    if (fewest >= 2 && pair.difference && tTest.limits) pair.difference->withSpread = limitsFrom(*tTest.limits);
    if (fewest >= 3) pair.batchRatesP = tTest.p;
    if (fewest < 4) return;
    stats::SeededRandom random(settings.seed + 1);
    constexpr double enumerateUpTo = 200'000;
    const auto permutation =
        stats::trayPermutationTest(trays1, trays2, random, enumerateUpTo, settings.allocationsDrawn, stop);
    if (!permutation.wasStopped) pair.batchPermutationP = permutation.p;
}

}  // namespace

Pair pairOf(const ArmRecords& first, const ArmRecords& second, const PairSettings& settings,
            const std::stop_token& stop) {
    Pair pair;
    compareCounts({first.arm.rooted, first.arm.assessed, second.arm.rooted, second.arm.assessed}, settings, pair);
    pair.bySpecies = bySpecies(first, second, settings);
    pair.pooled = pooledOver(first, second, settings);
    allowForSpread(settings.likelyDesignEffect, pair.pooled);
    if (stop.stop_requested()) return pair;
    compareBatches(first, second, settings, stop, pair);
    compareCurves(first, second, settings, stop, pair);
    pair.speed = compareSpeeds(first.courses, second.courses, first.arm.speed, second.arm.speed, settings.level);
    if (settings.margin) {
        pair.firstAsGood = asGoodAs(first, second, *settings.margin, settings.level);
        pair.secondAsGood = asGoodAs(second, first, *settings.margin, settings.level);
    }
    return pair;
}

void conclude(const ArmRecords& first, const ArmRecords& second, const PairSettings& settings, Pair& pair) {
    pair.verdict = verdictOn(first, second, pair, settings.level);
    if (pair.verdict == Verdict::CannotTellMethodFromStation || pair.verdict == Verdict::TooFewBatches)
        for (std::optional<AsGoodAs>* answer : {&pair.firstAsGood, &pair.secondAsGood})
            if (*answer) (*answer)->isShown = false;
    if (pair.verdict == Verdict::FirstBetter && pair.firstAsGood) pair.firstAsGood->isShown = true;
    if (pair.verdict == Verdict::SecondBetter && pair.secondAsGood) pair.secondAsGood->isShown = true;
    pair.inWords = pairInWords(first, second, pair, settings);
    if (!settings.margin) return;
    const std::string asGood = asGoodAsInWords(first, second, pair, settings.factor, *settings.margin);
    if (!asGood.empty()) pair.inWords += " " + asGood;
}

}  // namespace core
