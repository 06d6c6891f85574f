// SPDX-License-Identifier: MIT
#include "core/comparison/turning_point.h"

#include <algorithm>
#include <cmath>
#include <tuple>

#include "core/comparison/english.h"
#include "stats/surveillance/change_point.h"

namespace core {
namespace {

// In order of sticking, of known fate, the last ones.
std::vector<const Course*> coursesForTurn(std::span<const Course> batches) {
    constexpr int mostCuttings = 20'000;
    std::vector<const Course*> inOrder;
    for (const Course& course : batches)
        if (course.fate.assessed > 0 && course.fate.assessed <= mostCuttings) inOrder.push_back(&course);
    std::ranges::sort(inOrder, {}, [](const Course* course) {
        return std::tuple(course->record->batch.stuckOn, course->record->batch.id);
    });
    if (inOrder.size() > mostBatchesForTurn) inOrder.erase(inOrder.begin(), inOrder.end() - mostBatchesForTurn);
    return inOrder;
}

TurnBatch turnBatchAt(const std::vector<const Course*>& inOrder, const stats::TurnPlace& place) {
    const Batch& batch = inOrder[place.firstAfter]->record->batch;
    return {.id = batch.id,
            .code = batch.code,
            .stuckOn = batch.stuckOn,
            .lastBefore = inOrder[place.lastBefore]->record->batch.stuckOn};
}

TurnRate rateFrom(const stats::TurnRate& rate) {
    return {.rate = rate.mean, .limits = {.low = rate.limits.low, .high = rate.limits.high}};
}

std::string chanceInPercent(double chance) {
    if (chance > 0.99) return "more than 99 %";
    if (chance < 0.01) return "less than 1 %";
    return std::to_string(static_cast<int>(std::lround(100 * chance))) + " %";
}

std::string rateInWords(const TurnRate& rate) {
    return std::to_string(perHundred(rate.rate)) + " of 100 (" + std::to_string(perHundred(rate.limits.low)) + " to " +
           std::to_string(perHundred(rate.limits.high)) + ")";
}

// "fewer rooted: 41 of 100 (30 to 53) instead of 68 of 100 (60 to 75)."
std::string ratesInWords(const TurningPoint& turn) {
    const char* how = turn.after.rate < turn.before.rate ? "fewer" : "more";
    return std::string(how) + " rooted: " + rateInWords(turn.after) + " instead of " + rateInWords(turn.before) + ".";
}

std::string stretchInWords(const TurningPoint& turn) {
    if (turn.earliest.id == turn.latest.id)
        return "it lies after " + isoText(turn.likeliest.lastBefore) + ", when the batch before that one was stuck.";
    return "it may lie anywhere from " + turn.earliest.code + " (" + isoText(turn.earliest.stuckOn) + ") to " +
           turn.latest.code + " (" + isoText(turn.latest.stuckOn) + ").";
}

std::string turnInWords(const TurningPoint& turn) {
    const std::string among = counted(turn.batches, "batch", "batches");
    const std::string from =
        "about batch " + turn.likeliest.code + ", stuck on " + isoText(turn.likeliest.stuckOn) + ", ";
    const std::string chance = chanceInPercent(turn.chance);
    if (turn.isCalled())
        return "From " + from + ratesInWords(turn) + " A turn is " + chance + " likely; " + stretchInWords(turn);
    if (turn.chance >= 0.5)
        return "There may have been a turn, but that is not certain (" + chance + "). If so, from " + from +
               ratesInWords(turn);
    constexpr double allButRuledOut = 0.2;
    return "No turn shows among " + among +
           (turn.chance < allButRuledOut ? ": one is " : ", nor can one be ruled out: it is ") + chance +
           " likely, from an even chance before counting.";
}

}  // namespace

bool TurningPoint::isCalled() const {
    return chance >= chanceOfCalledTurn;
}

std::optional<TurningPoint> turningPointOf(std::span<const Course> batches, const stats::PooledSpread& others,
                                           double level) {
    constexpr std::size_t fewestBatches = 3;
    const std::vector<const Course*> inOrder = coursesForTurn(batches);
    if (inOrder.size() < fewestBatches) return {};
    TurningPoint turn{.level = level, .batches = static_cast<int>(inOrder.size())};
    stats::PastBatches past{.batches = {}, .spread = others.law, .prior = {}};
    for (const Course* course : inOrder) {
        past.batches.push_back({.successes = course->fate.rooted, .trials = course->fate.assessed});
        turn.counted.push_back(
            {.code = course->record->batch.code, .rooted = course->fate.rooted, .assessed = course->fate.assessed});
    }
    for (const stats::WeightedCorrelation& each : others.law) turn.correlations.push_back(each.correlation);
    const stats::ChangePoint found = stats::changePoint(past, level);
    const auto isCredible = [](const stats::TurnPlace& place) { return place.isCredible; };
    turn.chance = found.probability;
    turn.likeliest = turnBatchAt(inOrder, found.places[found.mostLikely]);
    turn.chanceOfLikeliest = found.places[found.mostLikely].probability;
    turn.earliest = turnBatchAt(inOrder, *std::ranges::find_if(found.places, isCredible));
    turn.latest = turnBatchAt(inOrder, *std::find_if(found.places.rbegin(), found.places.rend(), isCredible));
    turn.before = rateFrom(found.rates->before);
    turn.after = rateFrom(found.rates->after);
    turn.change = {.low = found.rates->change.limits.low, .high = found.rates->change.limits.high};
    turn.inWords = turnInWords(turn);
    return turn;
}

}  // namespace core
