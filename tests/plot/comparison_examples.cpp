// SPDX-License-Identifier: MIT
#include "tests/plot/comparison_examples.h"

#include <algorithm>
#include <cstddef>

#include "stats/proportion/wilson_interval.h"
#include "stats/two_proportions/miettinen_nurminen_difference.h"
#include "stats/two_proportions/newcombe_difference.h"

namespace examples {
namespace {

constexpr double kLevel = 0.95;

core::Limits limitsFrom(const stats::Interval& interval) {
    return {.low = interval.low, .high = interval.high};
}

core::Limits widened(const core::Limits& limits, double by, double least, double most) {
    const double middle = (limits.low + limits.high) / 2, half = (limits.high - limits.low) / 2;
    return {.low = std::max(least, middle - by * half), .high = std::min(most, middle + by * half)};
}

std::vector<std::string> plantNames() {
    return {"Salvia rosmarinus",      "Lavandula angustifolia 'Hafod Blue'",
            "Pelargonium graveolens", "Fuchsia magellanica",
            "Ribes nigrum",           "Hydrangea macrophylla",
            "Buddleja davidii",       "Cornus alba 'Ruby Lane'",
            "Ficus carica",           "Philadelphus coronarius",
            "Mentha × piperita",      "Coleus scutellarioides"};
}

core::BySpecies speciesLine(const std::string& name, int rooted1, int assessed1, int rooted2, int assessed2) {
    core::BySpecies line{.species = name,
                         .firstRooted = rooted1,
                         .firstAssessed = assessed1,
                         .secondRooted = rooted2,
                         .secondAssessed = assessed2,
                         .difference = {},
                         .limits = {.low = -1, .high = 1}};
    if (assessed1 == 0 || assessed2 == 0) return line;
    line.difference = static_cast<double>(rooted1) / assessed1 - static_cast<double>(rooted2) / assessed2;
    line.limits = limitsFrom(stats::miettinenNurminenDifference({rooted1, assessed1, rooted2, assessed2}, kLevel));
    return line;
}

core::Pair pairOf(const core::Arm& first, const core::Arm& second, int firstIndex, int secondIndex) {
    core::Pair pair;
    pair.first = firstIndex, pair.second = secondIndex;
    if (first.assessed == 0 || second.assessed == 0) return pair;
    const stats::TwoCounts counts{first.rooted, first.assessed, second.rooted, second.assessed};
    core::PairDifference difference;
    difference.value = *first.rate - *second.rate;
    difference.newcombe = limitsFrom(stats::newcombeDifference(counts, kLevel));
    difference.miettinenNurminen = limitsFrom(stats::miettinenNurminenDifference(counts, kLevel));
    difference.withSpread = widened(difference.miettinenNurminen, 1.5, -1, 1);
    pair.difference = difference;
    pair.riskRatio = *first.rate / *second.rate;
    pair.koopman = {.low = 1.07, .high = 1.77};
    pair.oddsRatio = 2.4;
    pair.oddsRatioExact = {.low = 1.31, .high = 4.42};
    pair.fisher = 0.004, pair.fisherMid = 0.003, pair.boschloo = 0.004, pair.barnard = 0.003;
    pair.probabilityFirstBetter = 0.9962;
    pair.curvesP = 0.021;
    pair.batchRatesP = 0.09;
    pair.inWords =
        "Of 100 cuttings, the media tray would root about 17 more than the aerated water; anything from 5 more to 29 "
        "more fits "
        "these counts.";
    return pair;
}

void addPooled(core::Pair& pair) {
    core::Pooled& pooled = pair.pooled;
    pooled.strata = static_cast<int>(pair.bySpecies.size());
    for (const core::BySpecies& line : pair.bySpecies)
        pooled.counts.push_back({.name = line.species,
                                 .firstRooted = line.firstRooted,
                                 .firstAssessed = line.firstAssessed,
                                 .secondRooted = line.secondRooted,
                                 .secondAssessed = line.secondAssessed});
    pooled.oddsRatio = 2.3, pooled.oddsRatioLimits = {.low = 1.3, .high = 4.1};
    pooled.riskDifference = 0.16, pooled.riskDifferenceLimits = {.low = 0.05, .high = 0.27};
    pooled.oddsRatioWithSpread = {.low = 1.1, .high = 4.8};
    pooled.riskDifferenceWithSpread = {.low = 0.02, .high = 0.30};
    pooled.cmhP = 0.004, pooled.agreementP = 0.42;
}

core::Comparison compared(core::Arm first, core::Arm second) {
    core::Comparison comparison;
    comparison.horizonDay = 28;
    comparison.horizonReason = "the logbook's";
    comparison.level = kLevel;
    comparison.arms = {std::move(first), std::move(second)};
    comparison.pairs = {pairOf(comparison.arms[0], comparison.arms[1], 0, 1)};
    core::Spread& spread = comparison.spread;
    spread.intraclassCorrelation = 0.08, spread.limits = {.low = 0.02, .high = 0.21};
    spread.designEffect = 1.7, spread.isFromRecords = true, spread.weightOfRecords = 0.6;
    spread.groups = 4, spread.batches = 12;
    comparison.inWords = comparison.pairs[0].inWords;
    return comparison;
}

}  // namespace

core::Arm weeklyArm(const std::string& name, int stuck, const std::vector<int>& rooted, const std::vector<int>& lost,
                    bool hasBands) {
    core::Arm arm;
    arm.name = name;
    arm.batches = hasBands ? 6 : 1;
    arm.stations = hasBands ? 3 : 1;
    arm.stuck = stuck;
    for (std::size_t i = 0; i < rooted.size(); ++i) {
        const int day = 7 * (static_cast<int>(i) + 1), waiting = stuck - rooted[i] - lost[i];
        const double share = static_cast<double>(rooted[i]) / stuck, gone = static_cast<double>(lost[i]) / stuck;
        std::optional<core::Limits> band;
        if (hasBands) band = widened(limitsFrom(stats::wilsonInterval(rooted[i], stuck, kLevel)), 1.3, 0, 1);
        arm.rootedByDay.push_back({.day = static_cast<double>(day), .share = share, .band = band});
        arm.lostByDay.push_back({.day = static_cast<double>(day), .share = gone, .band = {}});
        arm.looks.push_back({.day = day, .waiting = waiting, .rooted = rooted[i], .lost = lost[i]});
        arm.stillWatched.push_back(waiting);
        if (share >= 0.5 && !arm.ofStuck.p50) arm.ofStuck.p50 = core::DayRange{.after = day - 7.0, .by = day * 1.0};
    }
    arm.rooted = rooted.empty() ? 0 : rooted.back();
    arm.lost = lost.empty() ? 0 : lost.back();
    arm.undecided = stuck - arm.rooted - arm.lost;
    arm.assessed = rooted.empty() ? 0 : stuck;
    if (arm.assessed == 0) return arm;
    arm.rate = static_cast<double>(arm.rooted) / arm.assessed;
    arm.asCounted = limitsFrom(stats::wilsonInterval(arm.rooted, arm.assessed, kLevel));
    if (hasBands) arm.withSpread = widened(*arm.asCounted, 1.4, 0, 1);
    if (arm.lost > 0) arm.losses = {{.cause = "rot", .count = arm.lost}};
    return arm;
}

core::Comparison twoMethods(int species) {
    core::Comparison comparison = compared(weeklyArm("media tray", 120, {12, 51, 78, 84}, {2, 6, 11, 20}),
                                           weeklyArm("aerated water", 118, {20, 40, 55, 62}, {4, 15, 24, 31}));
    const std::vector<std::string> names = plantNames();
    for (int i = 0; i < std::min(species, 12); ++i)
        comparison.pairs[0].bySpecies.push_back(
            speciesLine(names[static_cast<std::size_t>(i)], 6 + 3 * i % 8, 14 + i, 5 + 5 * i % 7, 12 + 2 * i));
    addPooled(comparison.pairs[0]);
    return comparison;
}

core::Comparison oneStationEach() {
    core::Comparison comparison = compared(weeklyArm("media tray", 24, {0, 18}, {0, 2}, false),
                                           weeklyArm("aerated water", 24, {3, 11}, {1, 6}, false));
    core::Pair& pair = comparison.pairs[0];
    pair.difference->withSpread.reset();
    pair.verdict = core::Verdict::CannotTellMethodFromStation;
    pair.bySpecies = {speciesLine("Ribes nigrum", 18, 24, 11, 24)};
    pair.pooled = {};
    comparison.cautions = {
        "Each arm stood in one station, so what the method does and what the station does cannot be told apart."};
    return comparison;
}

core::Comparison manyArms(int count) {
    core::Comparison comparison = compared(weeklyArm("IBA 1000 mg/L, gel", 60, {6, 24, 40, 44}, {0, 4, 6, 8}),
                                           weeklyArm("none", 58, {4, 16, 26, 30}, {2, 8, 12, 16}));
    for (int i = 2; i + 1 < count; ++i)
        comparison.arms.push_back(weeklyArm("IBA " + std::to_string(1000 * i) + " mg/L, liquid dip", 40 - i,
                                            {2, 10 + i, 20 - i, 24 - i}, {0, 1, i, 2 * i}));
    if (count > 2) comparison.arms.push_back(weeklyArm("not recorded", 6, {}, {}));
    return comparison;
}

core::Comparison nothing() {
    core::Comparison comparison;
    comparison.horizonDay = 28, comparison.horizonReason = "the logbook's";
    comparison.level = kLevel;
    comparison.inWords = "Nothing to compare.";
    return comparison;
}

core::Comparison neverChecked() {
    return compared(weeklyArm("media tray", 24, {}, {}), weeklyArm("aerated water", 24, {}, {}));
}

core::Comparison longNames() {
    core::Comparison comparison = twoMethods(4);
    comparison.arms[0].name = "deep tray of coir and perlite on the heated bench under the north window";
    comparison.arms[1].name = "stems in collars over aerated water, the large grey tub with the slow pump";
    comparison.pairs[0].bySpecies[1].species =
        "Chamaecyparis lawsoniana var. imaginaria 'Grandmother’s Exceedingly Long Cultivar Name'";
    return comparison;
}

core::BatchSummary batchSummary() {
    const core::Arm arm = weeklyArm("media tray", 24, {0, 7, 15, 18}, {0, 1, 2, 4}, false);
    core::BatchSummary summary;
    summary.tally = {
        .stuck = 24, .rooted = 18, .lost = 4, .withdrawn = 0, .lastCheckedOn = core::dateFromIso("2026-04-11")};
    summary.rate = 0.75;
    summary.asCounted = *arm.asCounted;
    summary.rootedByDay = arm.rootedByDay;
    summary.lostByDay = arm.lostByDay;
    summary.looks = arm.looks;
    summary.ofStuck = arm.ofStuck;
    summary.ofRooted.p50 = core::DayRange{.after = 14, .by = 21};
    summary.losses = {{.cause = "rot", .count = 3}, {.cause = "cause not known", .count = 1}};
    const core::Arm past = weeklyArm("own past", 130, {6, 40, 70, 79}, {1, 6, 20, 28});
    summary.past = {.batches = 6,
                    .rooted = 79,
                    .assessed = 130,
                    .rate = past.rate,
                    .asCounted = past.asCounted,
                    .withSpread = past.withSpread,
                    .rootedByDay = past.rootedByDay};
    summary.inWords = "18 of 24 have rooted so far; your other batches of this plant in this method rooted 61 of 100.";
    return summary;
}

}  // namespace examples
