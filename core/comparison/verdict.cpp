// SPDX-License-Identifier: MIT
#include "core/comparison/verdict.h"

#include <algorithm>
#include <cmath>

#include "core/comparison/english.h"
#include "stats/numeric/normal_quantile.h"

namespace core {
namespace {

constexpr int fewestToSpeakOfRates = 5;
constexpr std::size_t fewestBatches = 3;
constexpr double mostLuck =
    0.1;  // whatever level is asked for: at one in two, luck alone would explain half of all verdicts

bool shareAStation(const std::vector<StationId>& first, const std::vector<StationId>& second) {
    return std::any_of(first.begin(), first.end(), [&second](StationId station) {
        return station.isSet() && std::binary_search(second.begin(), second.end(), station);
    });
}

// Known stations; batches that name none might have stood anywhere, so they count as none.
std::size_t knownStations(const std::vector<StationId>& stations) {
    return stations.size() - static_cast<std::size_t>(std::count(stations.begin(), stations.end(), StationId{}));
}

bool isOneBatchOnly(const ArmRecords& records) {
    return records.trays().size() < 2;
}

bool standsAlone(const ArmRecords& records, bool isShared) {
    return isOneBatchOnly(records) || (!isShared && knownStations(records.stations()) < 2);
}

std::string whyArmStandsAlone(const ArmRecords& records, Factor factor) {
    const std::string name = nameInWords(factor, records.arm.name);
    const std::size_t stations = knownStations(records.stations());
    if (isOneBatchOnly(records)) return name + " is one batch only";
    if (stations == 0) return "no station is recorded for " + name;
    return name + " stood at one station only";
}

// The arm that is ahead comes first, so that the sentence can say "more".
struct AheadAndBehind {
    const ArmRecords* ahead{};
    const ArmRecords* behind{};
    double value{};
    Limits limits;
    bool isWithSpread{};
};

AheadAndBehind aheadAndBehind(const ArmRecords& first, const ArmRecords& second, const Pair& pair) {
    const PairDifference& difference = *pair.difference;
    AheadAndBehind result{.ahead = &first,
                          .behind = &second,
                          .value = difference.value,
                          .limits = difference.miettinenNurminen,
                          .isWithSpread = false};
    if (const auto& spread = difference.withSpread) {
        result.limits = *spread;
        result.isWithSpread = true;
    }
    if (result.value < 0) {
        std::swap(result.ahead, result.behind);
        result.value = -result.value;
        result.limits = {.low = -result.limits.high, .high = -result.limits.low};
    }
    return result;
}

std::string estimateInWords(const AheadAndBehind& arms, const PairSettings& settings) {
    const int more = perHundred(arms.value);
    const std::string ahead = nameInWords(settings.factor, arms.ahead->arm.name);
    const std::string behind = nameInWords(settings.factor, arms.behind->arm.name);
    std::string words = "Of 100 cuttings, ";
    if (more == 0)
        words += ahead + " and " + behind + " would root about the same number by day " +
                 std::to_string(settings.horizonDay);
    else
        words += ahead + " would root about " + std::to_string(more) + " more than " + behind + " by day " +
                 std::to_string(settings.horizonDay);
    words += arms.isWithSpread ? "; allowing for the spread between batches, " : "; as counted, ";
    return words + moreOrFewer(arms.limits.low, arms.limits.high) + " fits these records (" +
           levelWords(settings.level) + " interval).";
}

// Normal approximation, four chances in five of an interval that excludes no difference, each cutting counting less by the design
// effect. Nothing where the difference is too small for any number that a grower would stick.
std::optional<int> moreToSettle(const ArmRecords& first, const ArmRecords& second, double difference,
                                const PairSettings& settings) {
    constexpr double beyondReach = 2000;
    const double rate1 = *first.arm.rate, rate2 = *second.arm.rate;
    if (difference < 0.005) return {};
    const double z = stats::normalQuantileOfLevel(settings.level) + stats::normalQuantile(0.8);
    const double needed = z * z * (rate1 * (1 - rate1) + rate2 * (1 - rate2)) / (difference * difference) *
                          std::max(1.0, settings.designEffect);
    if (needed > beyondReach) return {};
    return static_cast<int>(std::ceil(needed)) - std::min(first.arm.assessed, second.arm.assessed);
}

std::string uncapitalised(std::string sentence) {
    if (sentence.starts_with("Of ") || sentence.starts_with("Batch "))
        sentence[0] = static_cast<char>(sentence[0] - 'A' + 'a');
    return sentence;
}

std::string whatWouldSettle(const ArmRecords& first, const ArmRecords& second, const AheadAndBehind& arms,
                            const PairSettings& settings) {
    if (arms.isWithSpread && arms.limits.low > 0)
        return " Looked at alone this pair would count as clear; among as many pairs as there are here it does not "
               "yet.";
    const double difference = arms.value;
    const auto more = moreToSettle(first, second, difference, settings);
    if (!more)
        return " So small a difference, between batches that differ as these do, would take thousands of cuttings to "
               "settle.";
    if (*more < 1) return " Batches differ too much to decide it; a few more batches of each would likely settle it.";
    return " About " + counted(roundedUp(*more), "more cutting", "more cuttings") +
           " per arm, in batches of their own, would likely settle it.";
}

std::string tooFewBatches(const ArmRecords& first, const ArmRecords& second, Factor factor) {
    const auto batchesIn = [factor](const ArmRecords& records) {
        return counted(static_cast<int>(records.trays().size()), "batch", "batches") + " of " +
               nameInWords(factor, records.arm.name);
    };
    return " But with " + batchesIn(first) + " and " + batchesIn(second) +
           " it can't be judged how much batches differ by luck: it takes three of each at least to say which is "
           "better.";
}

}  // namespace

std::string whyNotTold(const ArmRecords& first, const ArmRecords& second, Factor factor) {
    const bool isShared = shareAStation(first.stations(), second.stations());
    std::vector<std::string> reasons;
    for (const ArmRecords* records : {&first, &second})
        if (standsAlone(*records, isShared)) reasons.push_back(whyArmStandsAlone(*records, factor));
    if (reasons.empty()) return {};
    const bool isBatch = isShared && (isOneBatchOnly(first) || isOneBatchOnly(second));
    return listed(reasons) + ", so the " + factorInWords(factor) + " and the " + (isBatch ? "batch" : "station") +
           " can't be told apart, however many cuttings are counted";
}

Verdict verdictOn(const ArmRecords& first, const ArmRecords& second, const Pair& pair, double level) {
    const bool isShared = shareAStation(first.stations(), second.stations());
    if (standsAlone(first, isShared) || standsAlone(second, isShared)) return Verdict::CannotTellMethodFromStation;
    if (std::min(first.trays().size(), second.trays().size()) < fewestBatches) return Verdict::TooFewBatches;
    const double difference = pair.difference ? pair.difference->value : 0;
    // Where no batch differs from its arm's others there is no t; then what chance alone could deal decides.
    const std::optional<double> p = pair.batchRatesHolm ? pair.batchRatesHolm : pair.batchPermutationP;
    if (!p || *p >= std::min(1 - level, mostLuck) || difference == 0) return Verdict::NoClearDifference;
    return difference > 0 ? Verdict::FirstBetter : Verdict::SecondBetter;
}

std::string pairInWords(const ArmRecords& first, const ArmRecords& second, const Pair& pair,
                        const PairSettings& settings) {
    if (!pair.difference || std::min(first.arm.assessed, second.arm.assessed) < fewestToSpeakOfRates)
        return "It is too early to speak of rates: by day " + std::to_string(settings.horizonDay) + " the fate of " +
               counted(first.arm.assessed, "cutting", "cuttings") + " of " +
               nameInWords(settings.factor, first.arm.name) + " and of " + std::to_string(second.arm.assessed) +
               " of " + nameInWords(settings.factor, second.arm.name) + " is known.";
    const AheadAndBehind arms = aheadAndBehind(first, second, pair);
    const std::string estimate = estimateInWords(arms, settings);
    switch (pair.verdict) {
        case Verdict::CannotTellMethodFromStation:
            return estimate + " But " + whyNotTold(first, second, settings.factor) +
                   "; more batches, each at a station of its own, would tell.";
        case Verdict::TooFewBatches:
            return estimate + tooFewBatches(first, second, settings.factor);
        case Verdict::NoClearDifference:
            return "No clear difference: " + uncapitalised(estimate) + whatWouldSettle(first, second, arms, settings);
        case Verdict::FirstBetter:
        case Verdict::SecondBetter:
            break;
    }
    const ArmRecords& better = pair.verdict == Verdict::FirstBetter ? first : second;
    return estimate + " Batch by batch, " + nameInWords(settings.factor, better.arm.name) +
           " did better by more than luck would explain.";
}

}  // namespace core
