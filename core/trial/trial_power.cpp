// SPDX-License-Identifier: MIT
#include "core/trial/trial_power.h"

#include <algorithm>
#include <cmath>
#include <set>

#include "core/comparison/arm_records.h"
#include "core/comparison/english.h"
#include "core/comparison/rate_interval.h"
#include "core/comparison/spread.h"
#include "core/field_faults.h"
#include "core/planning/past_records.h"
#include "core/trial/trial_progress.h"
#include "core/trial/trial_rules.h"
#include "stats/planning/exact_power.h"
#include "stats/planning/non_inferiority_power.h"
#include "stats/planning/sample_size.h"

namespace core {

namespace {

constexpr double often = 0.8, veryOften = 0.9;
constexpr int fewestBatchesForAVerdict = 3;

double alphaOf(const TrialPowerQuestion& question) {
    return (1 - question.level) / (question.arms * (question.arms - 1) / 2.0);
}

/// The rate that the other arm would have: better by the difference where there is room, else worse.
double otherRate(const TrialPowerQuestion& question) {
    if (question.measure == TrialMeasure::AsGoodAs) return question.expected;
    const double better = question.expected + question.margin;
    return better <= 1 ? better : question.expected - question.margin;
}

/// So many cuttings with luck of their own are worth as much as an arm's. A number, not necessarily whole.
double effective(const TrialPowerQuestion& question, double perArm) {
    const double perBatch = std::max(1.0, perArm / question.batchesPerArm);
    return perArm / stats::designEffectOfTrays(perBatch, question.correlation);
}

/// The other way round; nothing when no number of cuttings in so many batches is worth that much.
std::optional<int> perArmWorth(const TrialPowerQuestion& question, int independent) {
    const double shared = independent * question.correlation / question.batchesPerArm;
    if (independent <= question.batchesPerArm || question.correlation <= 0) return independent;
    if (shared >= 1) return {};
    int perArm = static_cast<int>(std::floor(independent * (1 - question.correlation) / (1 - shared)));
    while (effective(question, perArm) < independent) ++perArm;  // one or two, for rounding
    return perArm;
}

/// Power for so many cuttings with luck of their own.
double independentPower(const TrialPowerQuestion& question, int cuttings) {
    const stats::PlannedArms arms{
        .trials1 = cuttings, .trials2 = cuttings, .rate1 = question.expected, .rate2 = otherRate(question)};
    if (question.measure == TrialMeasure::AsGoodAs)
        return stats::nonInferiorityPower(arms, question.margin, 1 - alphaOf(question));
    return stats::boschlooPowerAlone(arms, alphaOf(question), stats::BoschlooKind::Central);
}

std::optional<int> independentFor(const TrialPowerQuestion& question, double power, const std::stop_token& stop) {
    const bool isAsGood = question.measure == TrialMeasure::AsGoodAs;
    return stats::sampleSize({.rate1 = question.expected,
                              .rate2 = otherRate(question),
                              .alpha = alphaOf(question),
                              .power = power,
                              .test = isAsGood ? stats::PlannedTest::NonInferiority : stats::PlannedTest::Boschloo,
                              .mostPerArm = question.mostPerArm,
                              .margin = question.margin},
                             stop)
        .independentPerArm;
}

std::optional<int> upTo(std::optional<int> perArm, int most) {
    return perArm && *perArm <= most ? perArm : std::nullopt;
}

/// The fewest batches per arm with which a number up to the most will do.
std::optional<int> batchesWorth(TrialPowerQuestion question, int independent) {
    for (int batches = static_cast<int>(question.batchesPerArm) + 1; batches <= independent; ++batches) {
        question.batchesPerArm = batches;
        if (upTo(perArmWorth(question, independent), question.mostPerArm)) return batches;
    }
    return {};
}

/// Evenly over the range, some thirty of them, with the answers among them.
std::vector<int> numbersPerArm(const TrialPower& power) {
    constexpr int points = 30, least = 24;
    const int most = power.question.mostPerArm;
    const int last = power.perArmFor90   ? std::min(most, *power.perArmFor90 + *power.perArmFor90 / 3)
                     : power.perArmFor80 ? std::min(most, 2 * *power.perArmFor80)
                                         : most;
    std::set<int> numbers;
    const int end = std::max(least, last), step = std::max(1, end / points);
    for (int number = step; number <= end; number += step) numbers.insert(number);
    for (const std::optional<int> answer : {power.perArmFor80, power.perArmFor90})
        if (answer) numbers.insert(*answer);
    return {numbers.begin(), numbers.end()};
}

void fillCurve(TrialPower& power, const std::stop_token& stop) {
    int known = -1;
    double chance = 0;
    for (const int number : numbersPerArm(power)) {
        if (stop.stop_requested()) return;
        const int independent = static_cast<int>(std::floor(effective(power.question, number) + 1e-9));
        if (independent != known) chance = independentPower(power.question, known = independent);
        power.curve.push_back({.perArm = number, .power = chance});
    }
}

std::string ofHundredWords(double share) {
    return std::to_string(perHundred(share)) + " of 100";
}

std::string aimInWords(const TrialPower& power) {
    const double margin = power.question.margin;
    const std::string rate = std::to_string(perHundred(power.question.expected));
    if (power.question.measure == TrialMeasure::AsGoodAs)
        return "To show that an arm is as good within " + ofHundredWords(margin) + " (both rooting " + rate +
               " of 100)";
    return "To find a difference of " + ofHundredWords(margin) + " (" + rate + " against " +
           std::to_string(perHundred(power.expectedOther)) + ")";
}

std::string powerInWords(const TrialPower& power) {
    const std::string aim = aimInWords(power);
    const std::string most = std::to_string(power.question.mostPerArm);
    if (power.perArmFor80) {
        const std::string often80 = aim + " 8 times in 10, stick " + std::to_string(*power.perArmFor80) + " per arm";
        return often80 + (power.perArmFor90 ? "; 9 times in 10, " + std::to_string(*power.perArmFor90) + "."
                                            : "; 9 times in 10 it takes more than can be stuck here.");
    }
    if (power.batchesFor80)
        return aim + " 8 times in 10, up to " + most + " cuttings in " +
               counted(static_cast<int>(power.question.batchesPerArm), "batch", "batches") +
               " per arm do not do: they share too much luck. Spread over " + std::to_string(*power.batchesFor80) +
               " batches per arm or more they would.";
    return aim + " 8 times in 10, more than " + most + " cuttings per arm are needed. Ask for a larger difference.";
}

std::string powerWarning(const TrialPowerQuestion& question) {
    if (question.batchesPerArm >= fewestBatchesForAVerdict) return {};
    return "With " + counted(static_cast<int>(question.batchesPerArm), "batch", "batches") +
           " per arm their luck can't be judged, and the result will be no verdict, however many cuttings there are. "
           "Three or more "
           "stations or sessions per arm make one.";
}

/// All that is on record of the arm's kind, counted and with its intervals as everywhere else.
Arm countedOf(const TrialArm& arm, Factor factor, std::span<const PlantId> plants, const Shelves& shelves,
              std::span<const BatchRecord> batches, int horizonDay, const stats::PooledSpread& spread) {
    std::vector<const BatchRecord*> ofKind;
    for (const BatchRecord& record : batches) {
        const bool isOfPlants = plants.empty() || std::ranges::find(plants, record.batch.plant) != plants.end();
        if (isOfPlants && kindOf(record.batch, factor) == arm) ofKind.push_back(&record);
    }
    if (ofKind.empty()) return {};
    const double level = shelves.facts.level;
    ArmRecords records = armsOf(factor, shelves, ofKind, horizonDay, intervalOf(shelves.facts), level).front();
    Spread ofLogbook;
    ofLogbook.intraclassCorrelation = spread.correlation;
    borrowSpread(ofLogbook, level, records);
    return std::move(records.arm);
}

}  // namespace

Refusals faultsIn(const TrialPowerQuestion& question) {
    Refusals faults;
    if (!(question.expected >= 0 && question.expected <= 1))
        faults.push_back(outOfRange("Expected", figureText(100 * question.expected), "0 to 100 of 100"));
    if (!(question.margin > 0 && question.margin < 1))
        faults.push_back(
            outOfRange("Margin", figureText(100 * question.margin), "more than 0 and less than 100 of 100"));
    if (question.measure == TrialMeasure::MoreRooted && faults.empty() && otherRate(question) < 0)
        faults.push_back(outOfRange("Margin", figureText(100 * question.margin),
                                    "at most " + figureText(100 * std::max(question.expected, 1 - question.expected)) +
                                        " of 100, or one arm would have to root less than none or more than all:"));
    collect(faults, faultInWhole("Arms", question.arms, 2, static_cast<int>(mostArms)));
    if (!(question.batchesPerArm >= 1))
        faults.push_back(outOfRange("Batches per arm", figureText(question.batchesPerArm), "1 or more"));
    return faults;
}

double powerOf(const TrialPowerQuestion& question, int perArm) {
    return independentPower(question, static_cast<int>(std::floor(effective(question, perArm) + 1e-9)));
}

Result<TrialPower> trialPower(const TrialPowerQuestion& question, const std::stop_token& stop) {
    if (Refusals faults = faultsIn(question); !faults.empty()) return refused(std::move(faults));
    TrialPower power{.question = question, .expectedOther = otherRate(question)};
    const auto for80 = power.independentFor80 = independentFor(question, often, stop);
    const auto for90 = stop.stop_requested() ? std::nullopt : independentFor(question, veryOften, stop);
    if (for80) power.perArmFor80 = upTo(perArmWorth(question, *for80), question.mostPerArm);
    if (for90) power.perArmFor90 = upTo(perArmWorth(question, *for90), question.mostPerArm);
    if (for80 && !power.perArmFor80) power.batchesFor80 = batchesWorth(question, *for80);
    fillCurve(power, stop);
    power.answerInWords = powerInWords(power);
    power.warning = powerWarning(question);
    return power;
}

ExpectedRate expectedRateOf(const Trial& design, std::span<const PlantId> plants, const Shelves& shelves,
                            std::span<const BatchRecord> batches, const stats::PooledSpread& spread) {
    if (!design.factor || design.arms.empty()) return {.limits = {}, .inWords = "Say first what the arms are."};
    const TrialArm& arm = design.arms.front();
    const std::string name = nameInWords(*design.factor, nameOf(arm, *design.factor, shelves));
    const int horizonDay = design.horizonDay.value_or(shelves.facts.horizonDay);
    const Arm onRecord = countedOf(arm, *design.factor, plants, shelves, batches, horizonDay, spread);
    if (onRecord.assessed > 0) {
        const Limits limits = onRecord.withSpread ? *onRecord.withSpread : *onRecord.asCounted;
        const int counting = static_cast<int>(onRecord.counted.size());
        return {.rate = pastRecordsOf(onRecord.counted).meanRate,
                .batches = counting,
                .limits = limits,
                .inWords = "On record, " + name + " by day " + std::to_string(horizonDay) + ": " +
                           std::to_string(onRecord.rooted) + " of " + std::to_string(onRecord.assessed) +
                           " rooted, in " + counted(counting, "batch", "batches") + "; " +
                           std::to_string(perHundred(limits.low)) + " to " + std::to_string(perHundred(limits.high)) +
                           " of 100 fits (" + levelWords(shelves.facts.level) + " interval" +
                           (onRecord.withSpread ? ", with the spread between batches" : "") + ")."};
    }
    if (plants.size() == 1) {
        const PastRecords past = pastRecordsOf(plants.front(), arm.method, shelves, batches, spread);
        if (past.band) return {.rate = past.meanRate, .batches = 0, .limits = {}, .inWords = restsOnInWords(past)};
    }
    return {.limits = {},
            .inWords = "Nothing of " + name + " is on record, so a half is reckoned with: it takes the most cuttings."};
}

}  // namespace core
