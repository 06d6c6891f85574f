// SPDX-License-Identifier: MIT
#include "core/comparison/comparison.h"

#include <algorithm>
#include <map>

#include "core/comparison/arm_records.h"
#include "core/comparison/cautions.h"
#include "core/comparison/days_to_root.h"
#include "core/comparison/english.h"
#include "core/comparison/pair_of_arms.h"
#include "core/units/figure_text.h"
#include "stats/overdispersion/beta_binomial.h"

namespace core {
namespace {

Refusals faultsIn(const Horizon& horizon, double level) {
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
    return faults;
}

// One correlation over all arms and plants, since a few batches of one plant in one arm show little.
Spread spreadOf(std::span<const ArmRecords> arms) {
    std::map<std::pair<std::size_t, PlantId>, std::vector<stats::Tray>> traysOf;
    Spread spread;
    double cuttings = 0, squares = 0;
    for (std::size_t i = 0; i < arms.size(); ++i) {
        for (const Course& course : arms[i].courses) {
            if (course.fate.assessed == 0) continue;
            traysOf[{i, course.record->batch.plant}].push_back({course.fate.rooted, course.fate.assessed});
            ++spread.batches;
            cuttings += course.fate.assessed;
            squares += static_cast<double>(course.fate.assessed) * course.fate.assessed;
        }
    }
    std::vector<std::vector<stats::Tray>> groups;
    for (auto& [key, trays] : traysOf)
        if (trays.size() > 1) groups.push_back(std::move(trays));  // a batch alone in its group shows no spread
    if (groups.empty()) return spread;
    spread.intraclassCorrelation = stats::fitCommonCorrelation(groups).correlation;
    // The design effect of batches of unequal size takes the mean size weighted by size.
    if (spread.intraclassCorrelation)
        spread.designEffect = 1 + (squares / cuttings - 1) * *spread.intraclassCorrelation;
    return spread;
}

// Replicates for so many batches: what is drawn again grows with them while the interval narrows, so fewer will do.
int affordable(int wanted, std::size_t batches, int tasks) {
    constexpr std::size_t drawsInAll = 2'000'000;
    constexpr int fewestThatSay = 99;
    const std::size_t draws =
        drawsInAll / (std::max<std::size_t>(1, batches) * static_cast<std::size_t>(std::max(1, tasks)));
    return std::min(wanted, std::max(fewestThatSay, static_cast<int>(std::min<std::size_t>(draws, 1'000'000))));
}

void fillCurves(const ComparisonQuestion& question, double level, const std::stop_token& stop,
                std::vector<ArmRecords>& arms) {
    std::size_t batches = 0;
    for (const ArmRecords& records : arms) batches += records.courses.size();
    for (std::size_t i = 0; i < arms.size() && !stop.stop_requested(); ++i) {
        const Resampling resampling{.level = level,
                                    .replicates = affordable(question.bootstrapReplicates, batches, 1),
                                    .seed = std::uint64_t{question.seed} + 1000 * i};
        RootingCurves curves = rootingCurves(arms[i].courses, resampling, stop);
        Arm& arm = arms[i].arm;
        arm.rootedByDay = std::move(curves.rootedByDay);
        arm.lostByDay = std::move(curves.lostByDay);
        arm.stillWatched = std::move(curves.stillWatched);
        arm.looks = std::move(curves.looks);
        arm.ofStuck = curves.ofStuck;
        arm.ofRooted = curves.ofRooted;
    }
}

std::vector<Pair> pairsOf(const ComparisonQuestion& question, const Comparison& comparison, const Shelves& shelves,
                          std::span<const ArmRecords> arms, const std::stop_token& stop) {
    std::unordered_map<PlantId, std::string> plantNames;
    for (const Plant& plant : shelves.plants) plantNames.emplace(plant.id, fullName(plant));
    const int count = static_cast<int>(arms.size());
    const int pairs = count * (count - 1) / 2;
    std::vector<Pair> result;
    for (int i = 0; i < count; ++i) {
        for (int j = i + 1; j < count && !stop.stop_requested(); ++j) {
            const ArmRecords &first = arms[static_cast<std::size_t>(i)], &second = arms[static_cast<std::size_t>(j)];
            const std::size_t batches = first.courses.size() + second.courses.size();
            const PairSettings settings{.factor = comparison.factor,
                                        .horizonDay = comparison.horizonDay,
                                        .level = comparison.level,
                                        .permutations = affordable(question.permutations, batches, pairs),
                                        .allocationsDrawn = affordable(100'000, batches, pairs),
                                        .exactTrials = pairs > 10 ? 1200 : 4000,
                                        .seed = std::uint64_t{question.seed} + 1'000'000 + result.size(),
                                        .designEffect = comparison.spread.designEffect.value_or(1),
                                        .plantNames = &plantNames};
            Pair pair = pairOf(first, second, settings, stop);
            pair.first = i;
            pair.second = j;
            result.push_back(std::move(pair));
        }
    }
    return result;
}

std::string rateInWords(const Arm& arm, int horizonDay, double level) {
    if (!arm.rate) return "the fate of no cutting of " + arm.name + " is known at day " + std::to_string(horizonDay);
    const Limits limits = arm.withSpread ? *arm.withSpread : *arm.asCounted;
    return "of 100 cuttings of " + arm.name + " about " + std::to_string(perHundred(*arm.rate)) + " root by day " +
           std::to_string(horizonDay) + " (" + std::to_string(perHundred(limits.low)) + " to " +
           std::to_string(perHundred(limits.high)) + " fits, " + levelWords(level) + " interval)";
}

std::string comparisonInWords(const Comparison& comparison) {
    const std::string factor(wordFor(comparison.factor));
    if (comparison.arms.empty()) return "There are no batches to compare.";
    if (comparison.arms.size() == 1)
        return "There is only one " + factor + " in these records, so there is nothing to compare: " +
               rateInWords(comparison.arms.front(), comparison.horizonDay, comparison.level) + ".";
    if (comparison.pairs.size() == 1) return comparison.pairs.front().inWords;
    int decided = 0;
    for (const Pair& pair : comparison.pairs)
        if (pair.verdict == Verdict::FirstBetter || pair.verdict == Verdict::SecondBetter) ++decided;
    const auto byRate = [](const Arm& a, const Arm& b) { return a.rate.value_or(-1) < b.rate.value_or(-1); };
    const Arm& best = *std::max_element(comparison.arms.begin(), comparison.arms.end(), byRate);
    std::string words = "The highest rate is that of " + best.name + ": " +
                        rateInWords(best, comparison.horizonDay, comparison.level) + ". Of " +
                        counted(static_cast<int>(comparison.pairs.size()), "pair", "pairs") + ", ";
    words += decided == 0 ? std::string("none differs clearly, batch by batch")
                          : counted(decided, "differs", "differ") + " by more than luck would explain, batch by batch";
    return words + "; with so many looked at, one may seem to differ by luck alone.";
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

Result<Comparison> compare(const ComparisonQuestion& question, const Shelves& shelves,
                           std::span<const BatchRecord> batches, std::stop_token stop) {
    const Horizon horizon = horizonFor(question, shelves, batches);
    const double level = question.level.value_or(shelves.facts.level);
    if (Refusals faults = faultsIn(horizon, level); !faults.empty()) return refused(std::move(faults));
    Comparison comparison;
    comparison.factor = question.factor;
    comparison.horizonDay = horizon.day;
    comparison.horizonReason = horizon.reason;
    comparison.level = level;
    std::vector<ArmRecords> arms = armsOf(question.factor, shelves, batchesOf(question, batches), horizon.day, level);
    fillCurves(question, level, stop, arms);
    comparison.spread = spreadOf(arms);
    comparison.cautions = comparisonCautions(question.factor, horizon.day, shelves, arms);
    comparison.pairs = pairsOf(question, comparison, shelves, arms, stop);
    for (ArmRecords& records : arms) comparison.arms.push_back(std::move(records.arm));
    comparison.inWords = comparisonInWords(comparison);
    return comparison;
}

}  // namespace core
