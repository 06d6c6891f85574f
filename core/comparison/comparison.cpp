// SPDX-License-Identifier: MIT
#include "core/comparison/comparison.h"

#include <algorithm>
#include <numeric>

#include "core/comparison/arm_records.h"
#include "core/comparison/cautions.h"
#include "core/comparison/days_to_root.h"
#include "core/comparison/english.h"
#include "core/comparison/pair_of_arms.h"
#include "core/comparison/several_arms.h"
#include "core/comparison/speed.h"
#include "core/comparison/spread.h"
#include "core/units/figure_text.h"
#include "stats/time_to_event/curve_quantiles.h"

namespace core {
namespace {

Refusals faultsIn(const Horizon& horizon, double level, const std::optional<double>& margin) {
    Refusals faults;
    if (horizon.day < 1) {
        const std::string value = std::to_string(horizon.day);
        faults.push_back(
            {.field = "At day",
             .value = value,
             .allowed = "1 or more",
             .sentence = "At day is " + value + "; a comparison is decided at day 1 after sticking or later."});
    }
    if (!(level > 0 && level < 1)) {
        const std::string value = figureText(level);
        faults.push_back({.field = "Level",
                          .value = value,
                          .allowed = "between 0 and 1",
                          .sentence = "Level is " + value + "; it must lie between 0 and 1, such as 0.95."});
    }
    constexpr double leastMargin = 0.01, mostMargin = 0.99;
    if (margin && !(*margin >= leastMargin && *margin <= mostMargin)) {
        const std::string value = figureText(*margin * 100);
        faults.push_back({.field = "Margin",
                          .value = value,
                          .allowed = "1 to 99",
                          .sentence = "Margin is " + value + " of 100; it must lie between 1 and 99, such as 10."});
    }
    return faults;
}

std::vector<double> stepsOf(std::span<const ArmRecords> arms) {
    std::vector<double> steps;
    for (const ArmRecords& records : arms) steps.push_back(stepsPerEstimate(records.courses));
    return steps;
}

void fillCurves(const ComparisonQuestion& question, int horizonDay, double level, std::span<const double> steps,
                const std::stop_token& stop, std::vector<ArmRecords>& arms) {
    const int replicates = affordable(question.bootstrapReplicates, std::accumulate(steps.begin(), steps.end(), 0.0));
    for (std::size_t i = 0; i < arms.size() && !stop.stop_requested(); ++i) {
        const Resampling resampling{
            .level = level, .replicates = replicates, .seed = std::uint64_t{question.seed} + 1000 * i};
        RootingCurves curves = rootingCurves(arms[i].courses, resampling, stop);
        Arm& arm = arms[i].arm;
        arm.rootedByDay = std::move(curves.rootedByDay);
        arm.lostByDay = std::move(curves.lostByDay);
        arm.stillWatched = std::move(curves.stillWatched);
        arm.looks = std::move(curves.looks);
        arm.makeup = std::move(curves.makeup);
        arm.ofStuck = curves.ofStuck;
        arm.ofRooted = curves.ofRooted;
        // Beyond the last look the curve says nothing.
        if (!arm.looks.empty() && arm.looks.back().day >= horizonDay)
            arm.curveShare = stats::interpolatedShare(curves.rooting, horizonDay);
        arm.speed = rootingSpeed(arms[i].courses, level, stop);
    }
}

// The settings of each pair but for what depends on it.
PairSettings settingsOf(const ComparisonQuestion& question, const Comparison& comparison,
                        const std::unordered_map<PlantId, std::string>& plantNames) {
    return {.factor = comparison.factor,
            .horizonDay = comparison.horizonDay,
            .level = comparison.level,
            .margin = question.margin,
            .likelyDesignEffect = comparison.spread.designEffect,
            .designEffect = comparison.spread.isFromRecords ? comparison.spread.designEffect : 1,
            .plantNames = &plantNames};
}

std::vector<Pair> pairsOf(const ComparisonQuestion& question, PairSettings settings, std::span<const ArmRecords> arms,
                          std::span<const double> steps, const std::stop_token& stop) {
    const int count = static_cast<int>(arms.size());
    const int pairs = count * (count - 1) / 2;
    std::vector<Pair> result;
    for (int i = 0; i < count; ++i) {
        for (int j = i + 1; j < count && !stop.stop_requested(); ++j) {
            const auto a = static_cast<std::size_t>(i), b = static_cast<std::size_t>(j);
            const auto batches = static_cast<double>(arms[a].courses.size() + arms[b].courses.size());
            settings.permutations = affordable(question.permutations, (steps[a] + steps[b]) * pairs);
            settings.allocationsDrawn = affordable(100'000, 10 * batches * pairs);
            settings.exactTrials = pairs > 10 ? 1200 : 4000;
            settings.seed = std::uint64_t{question.seed} + 1'000'000 + result.size();
            Pair pair = pairOf(arms[a], arms[b], settings, stop);
            pair.first = i;
            pair.second = j;
            result.push_back(std::move(pair));
        }
    }
    return result;
}

void concludePairs(const PairSettings& settings, std::span<const ArmRecords> arms, std::vector<Pair>& pairs) {
    adjustForSeveral(pairs);
    for (Pair& pair : pairs)
        conclude(arms[static_cast<std::size_t>(pair.first)], arms[static_cast<std::size_t>(pair.second)], settings,
                 pair);
}

std::string rateInWords(const Comparison& comparison, const Arm& arm) {
    const std::string name = nameInWords(comparison.factor, arm.name),
                      day = "day " + std::to_string(comparison.horizonDay);
    if (!arm.rate) return "the fate of no cutting of " + name + " is known at " + day;
    const Limits limits = arm.withSpread ? *arm.withSpread : *arm.asCounted;
    return "of 100 cuttings of " + name + " about " + std::to_string(perHundred(*arm.rate)) + " root by " + day + " (" +
           std::to_string(perHundred(limits.low)) + " to " + std::to_string(perHundred(limits.high)) + " fits, " +
           levelWords(comparison.level) + " interval)";
}

std::string comparisonInWords(const Comparison& comparison) {
    const std::string factor = factorInWords(comparison.factor);
    if (comparison.arms.empty()) return "There are no batches to compare.";
    if (comparison.arms.size() == 1)
        return "There is only one " + factor + " in these records, so there is nothing to compare: " +
               rateInWords(comparison, comparison.arms.front()) + ".";
    if (comparison.pairs.size() == 1) return comparison.pairs.front().inWords;
    const auto byRate = [](const Arm& a, const Arm& b) { return a.rate.value_or(-1) < b.rate.value_or(-1); };
    const Arm& best = *std::max_element(comparison.arms.begin(), comparison.arms.end(), byRate);
    if (!best.rate)
        return "The fate of no cutting is known at day " + std::to_string(comparison.horizonDay) +
               ", so there is nothing to compare yet.";
    int decided = 0, judged = 0;
    for (const Pair& pair : comparison.pairs) {
        if (pair.verdict == Verdict::FirstBetter || pair.verdict == Verdict::SecondBetter) ++decided;
        if (pair.verdict != Verdict::CannotTellMethodFromStation && pair.verdict != Verdict::TooFewBatches) ++judged;
    }
    const bool isAlone = std::count_if(comparison.arms.begin(), comparison.arms.end(),
                                       [&](const Arm& arm) { return arm.rate == best.rate; }) == 1;
    std::string words = isAlone ? "The highest rate is that of " + nameInWords(comparison.factor, best.name) + ": " +
                                      rateInWords(comparison, best) + ". "
                                : "Several share the highest rate: " + rateInWords(comparison, best) + ". ";
    const std::string pairs = counted(static_cast<int>(comparison.pairs.size()), "pair", "pairs");
    if (judged == 0) return words + "Of " + pairs + " none can be told apart: see why below each.";
    words += "Of " + pairs + ", " +
             (judged < static_cast<int>(comparison.pairs.size()) ? std::to_string(judged) + " can be judged; of these "
                                                                 : std::string());
    words += decided == 0 ? std::string("none differs clearly, batch by batch")
                          : counted(decided, "differs", "differ") + " by more than luck would explain, batch by batch";
    return words + ", allowing for the number of pairs looked at.";
}

}  // namespace

std::string_view wordFor(Factor factor) {
    switch (factor) {
        case Factor::Method:
            return "method";
        case Factor::Treatment:
            return "treatment";
        case Factor::Medium:
            return "medium";
        case Factor::CuttingKind:
            return "cutting";
    }
    return "";
}

std::optional<Factor> factorFrom(std::string_view word) {
    for (const Factor factor : {Factor::Method, Factor::Treatment, Factor::Medium, Factor::CuttingKind})
        if (wordFor(factor) == word) return factor;
    return {};
}

Result<Comparison> compare(const ComparisonQuestion& question, const Shelves& shelves,
                           std::span<const BatchRecord> batches, std::stop_token stop,
                           const ConditionsOnRecord& conditions) {
    const Horizon horizon = horizonFor(question, shelves, batches);
    const double level = question.level.value_or(shelves.facts.level);
    if (Refusals faults = faultsIn(horizon, level, question.margin); !faults.empty()) return refused(std::move(faults));
    Comparison comparison;
    comparison.factor = question.factor;
    comparison.horizonDay = horizon.day;
    comparison.horizonReason = horizon.reason;
    comparison.level = level;
    comparison.interval = question.interval.value_or(intervalOf(shelves.facts));
    const std::vector<const BatchRecord*> asked = batchesOf(question, batches);
    std::vector<ArmRecords> arms = armsOf(question.factor, shelves, asked, horizon.day, comparison.interval, level);
    const std::vector<double> steps = stepsOf(arms);
    fillCurves(question, horizon.day, level, steps, stop, arms);
    comparison.spread = spreadOf(batches, horizon.day, arms, level);
    for (ArmRecords& records : arms) borrowSpread(comparison.spread, level, records);
    comparison.cautions = comparisonCautions(question.factor, horizon.day, shelves, arms);
    std::unordered_map<PlantId, std::string> plantNames;
    for (const Plant& plant : shelves.plants) plantNames.emplace(plant.id, fullName(plant));
    const PairSettings settings = settingsOf(question, comparison, plantNames);
    comparison.pairs = pairsOf(question, settings, arms, steps, stop);
    if (stop.stop_requested()) return comparison;
    concludePairs(settings, arms, comparison.pairs);
    if (arms.size() > 2) comparison.severalArms = severalArmsOf(arms);
    if (question.factor == Factor::Treatment) comparison.doses = doseSeriesOf(shelves, asked, horizon.day, level);
    comparison.goesWith = goesWithRooting(shelves, asked, horizon.day, level, conditions);
    for (ArmRecords& records : arms) comparison.arms.push_back(std::move(records.arm));
    comparison.inWords = comparisonInWords(comparison);
    return comparison;
}

}  // namespace core
