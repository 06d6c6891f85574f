// SPDX-License-Identifier: MIT
// By plant and method: strike rates, which method did best, and how sure that is.
#include <algorithm>

#include "core/comparison/english.h"
#include "core/comparison/pair_of_arms.h"
#include "core/comparison/several_arms.h"
#include "core/comparison/spread.h"
#include "core/comparison/verdict.h"
#include "core/review/review_parts.h"

namespace core {
namespace {

Spread spreadFrom(const stats::PooledSpread& pooled) {
    return {.intraclassCorrelation = pooled.correlation,
            .limits = {.low = pooled.limits.low, .high = pooled.limits.high},
            .isFromRecords = pooled.basis == stats::SpreadBasis::RecordsAndPrior,
            .likeBatches = {}};
}

/// What is asked of a comparison with its curves left out; exact tests of counts decide nothing here.
PairSettings settingsFor(const PlantInReview& plant, const ReviewWork& work, const Spread& spread) {
    const double size = plant.counts.batches > 0 ? static_cast<double>(plant.counts.stuck) / plant.counts.batches : 1;
    const double designEffect = 1 + std::max(0.0, size - 1) * spread.intraclassCorrelation;
    return {.factor = Factor::Method,
            .horizonDay = plant.horizonDay,
            .level = work.records.shelves.facts.level,
            .permutations = 0,
            .allocationsDrawn = 2000,
            .exactTrials = 0,
            .seed = 20260101,
            .margin = {},
            .likelyDesignEffect = designEffect,
            .designEffect = spread.isFromRecords ? designEffect : 1,
            .plantNames = nullptr};
}

std::vector<Pair> pairsAmong(const std::vector<ArmRecords>& arms, PairSettings settings,
                             const std::unordered_map<PlantId, std::string>& names, const std::stop_token& stop) {
    settings.plantNames = &names;
    std::vector<Pair> pairs;
    for (std::size_t i = 0; i < arms.size(); ++i) {
        for (std::size_t j = i + 1; j < arms.size() && !stop.stop_requested(); ++j) {
            pairs.push_back(pairOf(arms[i], arms[j], settings, stop));
            pairs.back().first = static_cast<int>(i);
            pairs.back().second = static_cast<int>(j);
        }
    }
    adjustForSeveral(pairs);
    for (Pair& pair : pairs)
        conclude(arms[static_cast<std::size_t>(pair.first)], arms[static_cast<std::size_t>(pair.second)], settings,
                 pair);
    return pairs;
}

PlantInReview plantIn(PlantId plant, ReviewWork& work) {
    const Plant* known = find(work.records.shelves.plants, plant);
    PlantInReview review{.plant = plant,
                         .name = known != nullptr ? fullName(*known) : "plant not recorded",
                         .horizonDay = work.horizonOf(plant)};
    std::vector<const BatchRecord*> inRates;
    for (const BatchRecord* record : work.ofPlant[plant]) {
        if (!work.isInSpan(record->batch.stuckOn)) continue;
        review.counts.add(tallyOf(record->batch, record->checks, work.records.today));
        if (work.isInRates(*record)) inRates.push_back(record);
    }
    review.ratedBatches = static_cast<int>(inRates.size());
    const stats::PooledSpread& pooled = work.spreadAt(review.horizonDay);
    const Spread spread = spreadFrom(pooled);
    review.correlation = pooled.correlation;
    const double level = work.records.shelves.facts.level;
    std::vector<ArmRecords> arms = armsOf(Factor::Method, work.records.shelves, inRates, review.horizonDay,
                                          intervalOf(work.records.shelves.facts), level);
    for (ArmRecords& records : arms) borrowSpread(spread, level, records);
    review.pairs = pairsAmong(arms, settingsFor(review, work, spread), {{plant, review.name}}, work.stop);
    for (ArmRecords& records : arms) review.methods.push_back(std::move(records.arm));
    review.best = bestOf(review.methods, review.pairs, review.horizonDay);
    return review;
}

std::optional<Pair> pairOfTwo(const std::vector<Pair>& pairs, int method, int other) {
    for (const Pair& pair : pairs)
        if ((pair.first == method && pair.second == other) || (pair.first == other && pair.second == method))
            return pair;
    return {};
}

bool isBetter(const Pair& pair, int method) {
    return pair.verdict == (pair.first == method ? Verdict::FirstBetter : Verdict::SecondBetter);
}

/// What a flat prior on the difference of mean batch rates gives: the t distribution read the other way round.
std::optional<double> chanceAhead(const Pair& pair, int method) {
    if (!pair.batchRatesP || !pair.difference) return {};
    const double difference = pair.difference->ofBatches.value_or(pair.difference->value);
    const bool isAhead = pair.first == method ? difference >= 0 : difference <= 0;
    return isAhead ? 1 - *pair.batchRatesP / 2 : *pair.batchRatesP / 2;
}

HowSure howSure(const std::vector<Pair>& pairs, int method, int others) {
    int better = 0;
    for (const Pair& pair : pairs) better += isBetter(pair, method) ? 1 : 0;
    if (better == 0) return HowSure::CannotTell;
    return better == others ? HowSure::BetterThanAll : HowSure::BetterThanSome;
}

/// Methods of which a rate can be spoken of, the highest rate first.
std::vector<int> byRate(const std::vector<Arm>& methods) {
    std::vector<int> places;
    for (int i = 0; i < std::ssize(methods); ++i)
        if (methods[static_cast<std::size_t>(i)].assessed >= fewestForARate) places.push_back(i);
    std::ranges::stable_sort(places, std::greater(),
                             [&](int place) { return *methods[static_cast<std::size_t>(place)].rate; });
    return places;
}

std::string bestInWords(const BestMethod& best, const std::vector<Arm>& methods, int horizonDay) {
    const auto nameOfMethod = [&](int method) {
        return nameInWords(Factor::Method, methods[static_cast<std::size_t>(method)].name);
    };
    switch (best.sure) {
        case HowSure::NothingKnown:
            return "The fate of too few cuttings at day " + std::to_string(horizonDay) + " is known to speak of rates.";
        case HowSure::OneMethodOnly:
            return "Only " + nameOfMethod(best.method) + " has a rate, so there is nothing to compare it with.";
        case HowSure::CannotTell:
            return "Can't be told yet. " + best.pair->inWords;
        case HowSure::BetterThanSome:
            return isBetter(*best.pair, best.method)
                       ? best.pair->inWords
                       : "Better than some others, but not than the next. " + best.pair->inWords;
        case HowSure::BetterThanAll:
            return best.pair->inWords;
    }
    return {};
}

}  // namespace

BestMethod bestOf(const std::vector<Arm>& methods, const std::vector<Pair>& pairs, int horizonDay) {
    BestMethod best;
    const std::vector<int> places = byRate(methods);
    if (!places.empty()) {
        best.method = places.front();
        best.sure = HowSure::OneMethodOnly;
    }
    if (places.size() > 1) {
        best.next = places[1];
        best.pair = pairOfTwo(pairs, best.method, best.next);
        best.sure = howSure(pairs, best.method, static_cast<int>(places.size()) - 1);
        best.chanceAhead = chanceAhead(*best.pair, best.method);
    }
    best.inWords = bestInWords(best, methods, horizonDay);
    return best;
}

void addPlants(ReviewWork& work, SeasonReview& review) {
    double done = 0;
    for (const auto& [plant, records] : work.ofPlant) {
        if (work.isStopped()) return;
        review.plants.push_back(plantIn(plant, work));
        for (const Arm& arm : review.plants.back().methods) review.assessed += arm.assessed;
        for (const Pair& pair : review.plants.back().pairs)
            review.pairsJudged +=
                pair.verdict != Verdict::CannotTellMethodFromStation && pair.verdict != Verdict::TooFewBatches;
        constexpr double from = 0.05, share = 0.35;
        work.tellShare(from + share * ++done / static_cast<double>(work.ofPlant.size()));
    }
    std::ranges::stable_sort(review.plants, {},
                             [](const PlantInReview& plant) { return std::pair(-plant.counts.stuck, plant.name); });
}

}  // namespace core
