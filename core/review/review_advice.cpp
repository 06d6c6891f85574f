// SPDX-License-Identifier: MIT
// What to try next: rules over what the review found, each with its own condition. docs/season_review.md lists them in words.
#include <algorithm>
#include <array>
#include <cmath>

#include "core/comparison/english.h"
#include "core/review/review_parts.h"
#include "core/trial/trial_power.h"

namespace core {
namespace {

constexpr std::size_t mostAdvice = 5;
/// A difference of 20 cuttings of 100 is taken to be worth knowing; eight batches of each arm are what a season has room for.
/// Common practice, no source.
constexpr double marginWorthKnowing = 0.2;
constexpr double batchesPerArm = 8;
/// Below so many losses, or less than that share of them, a cause or the lack of one is not spoken of.
constexpr int fewestLost = 5;
constexpr double shareToSpeakOf = 0.2;

const Arm& armOf(const PlantInReview& plant, int method) {
    return plant.methods[static_cast<std::size_t>(method)];
}

std::string methodOf(const PlantInReview& plant, int method) {
    return nameInWords(Factor::Method, armOf(plant, method).name);
}

std::string numberInWords(const PlantInReview& plant, const ReviewWork& work) {
    const TrialPowerQuestion question{.expected = *armOf(plant, plant.best.next).rate,
                                      .margin = marginWorthKnowing,
                                      .level = work.records.shelves.facts.level,
                                      .correlation = plant.correlation,
                                      .batchesPerArm = batchesPerArm};
    const Result<TrialPower> power = trialPower(question, work.stop);
    if (!power) return {};
    const std::string finds =
        " would show a difference of " + std::to_string(perHundred(marginWorthKnowing)) + " of 100 eight times in ten";
    if (power->perArmFor80)
        return counted(*power->perArmFor80, "cutting", "cuttings") + " of each in " +
               counted(static_cast<int>(batchesPerArm), "batch", "batches") + finds;
    if (power->batchesFor80) return "about " + counted(*power->batchesFor80, "batch", "batches") + " of each" + finds;
    return {};
}

/// The interval that allows for spread leaves no room for a difference worth knowing.
bool isDifferenceSmall(const Pair& pair) {
    if (!pair.difference || !pair.difference->withSpread) return false;
    const Limits& limits = *pair.difference->withSpread;
    return -marginWorthKnowing < limits.low && limits.high < marginWorthKnowing;
}

std::optional<std::string> trialFor(const PlantInReview& plant, const ReviewWork& work) {
    if (plant.best.sure != HowSure::CannotTell) return {};
    const std::string both = methodOf(plant, plant.best.method) + " and " + methodOf(plant, plant.best.next);
    if (isDifferenceSmall(*plant.best.pair))
        return plant.name + ": " + both + " differ by less than " + std::to_string(perHundred(marginWorthKnowing)) +
               " of 100 on record, so take the simpler or the cheaper.";
    const bool isOneStation = plant.best.pair->verdict == Verdict::CannotTellMethodFromStation;
    const std::string number = numberInWords(plant, work);
    return plant.name + ": compare " + both + " in a trial" +
           (isOneStation ? ", each at two stations or more, or the stations will be compared instead" : "") + "." +
           (number.empty() ? std::string()
                           : " " + std::string(1, static_cast<char>(std::toupper(number[0]))) + number.substr(1) + ".");
}

using Said = std::vector<Advice>;

void adviseTrials(const SeasonReview& review, const ReviewWork& work, Said& said) {
    constexpr std::size_t most = 2;
    for (const PlantInReview& plant : review.plants) {
        if (said.size() == most || work.isStopped()) return;
        if (const auto sentence = trialFor(plant, work))
            said.push_back({.kind = AdviceKind::Trial, .inWords = *sentence});
    }
}

void adviseBetterMethods(const SeasonReview& review, Said& said) {
    for (const PlantInReview& plant : review.plants) {
        if (plant.best.sure != HowSure::BetterThanAll) continue;
        said.push_back({.kind = AdviceKind::TakeTheBetter,
                        .inWords = plant.name + ": stick most by " + methodOf(plant, plant.best.method) + "; repeat " +
                                   methodOf(plant, plant.best.next) +
                                   " beside it in one more season before giving it up."});
        return;
    }
}

/// For the causes that a new logbook starts with. Common practice, no source.
std::string whatToLookAt(const std::string& cause) {
    constexpr std::array known{
        std::pair("rotted", "how warm and how old the solution or the medium was, and how clean the tools"),
        std::pair("dried out", "how humid the air was in the first days, and what dried out between two looks"),
        std::pair("pests", "when pests were first seen, and on which stock plants"),
        std::pair("broken", "how the cuttings are held, and how they are handled at a look")};
    for (const auto& [name, what] : known)
        if (cause == name) return what;
    return "what these batches had in common";
}

void adviseOnLosses(const SeasonReview& review, Said& said) {
    const auto known = std::ranges::find_if(review.losses.rows, [](const LossRow& row) { return row.cause.isSet(); });
    if (known == review.losses.rows.end() || known->loss.count < fewestLost || known->share < shareToSpeakOf) return;
    std::string words = "Of " + counted(review.losses.lost, "cutting", "cuttings") + " lost, " +
                        std::to_string(known->loss.count) + " were lost to \"" + known->loss.cause + "\": look at " +
                        whatToLookAt(known->loss.cause);
    const auto& stations = review.losses.stations;
    const double overall = review.losses.stood > 0 ? static_cast<double>(review.losses.lost) / review.losses.stood : 0;
    if (stations.size() > 1 && stations.front().station.isSet() && stations.front().count.asCounted.low > overall)
        words += ", first at " + stations.front().name + ", where " + std::to_string(stations.front().count.lost) +
                 " of " + std::to_string(stations.front().count.stood) + " were lost to anything";
    said.push_back({.kind = AdviceKind::LossCause, .inWords = words + "."});
}

void adviseOnMoney(const SeasonReview& review, Said& said) {
    if (!review.money) return;
    for (const WorthOfPair& pair : review.money->worth.pairs) {
        if (pair.verdict != WorthVerdict::CannotTellYet || !pair.moreCuttings || *pair.moreCuttings < 1) continue;
        said.push_back({.kind = AdviceKind::DearerMethod,
                        .inWords = "Whether " + nameInWords(Factor::Method, pair.dear.name) +
                                   " is worth its price against " + nameInWords(Factor::Method, pair.cheap.name) +
                                   " can't be told yet: about " +
                                   counted(roundedUp(*pair.moreCuttings), "more cutting", "more cuttings") +
                                   " of each, in batches of their own, would likely tell."});
        return;
    }
}

void adviseOnRecords(const SeasonReview& review, Said& said) {
    const auto record = [&](std::string sentence) {
        said.push_back({.kind = AdviceKind::Record, .inWords = std::move(sentence)});
    };
    if (review.unwatchedBatches > 0)
        record("Look at every batch when its day comes: " + counted(review.unwatchedBatches, "batch", "batches") +
               " had cuttings undecided and nobody looked at that day or after it, so " +
               (review.unwatchedBatches == 1 ? "it is" : "they are") + " in no rate.");
    const auto unknown =
        std::ranges::find_if(review.losses.rows, [](const LossRow& row) { return !row.cause.isSet(); });
    if (unknown != review.losses.rows.end() && unknown->loss.count >= fewestLost && unknown->share >= shareToSpeakOf)
        record("Write down why cuttings are lost: of " + std::to_string(review.losses.lost) + " lost, " +
               std::to_string(unknown->loss.count) + " have no cause on record.");
    if (!review.money)
        record(
            "Write down what things cost, on the shelf Prices: then the next review says what a rooted plant costs.");
}

void adviseOnUnusual(const SeasonReview& review, Said& said) {
    if (review.unusual.empty()) return;
    const UnusualBatch& rarest = review.unusual.front();
    said.push_back({.kind = AdviceKind::UnusualBatch,
                    .inWords = "Ask of batch " + rarest.code + " what may have gone wrong: by day " +
                               std::to_string(rarest.against.day) + " it had rooted " +
                               std::to_string(rarest.against.rooted) + " of " + std::to_string(rarest.against.of) +
                               ", where earlier ones lead to expect about " +
                               std::to_string(std::lround(rarest.against.expected)) + "."});
}

/// A plant that strikes at less than a half, by the one method that it was stuck by.
void adviseOtherMethods(const SeasonReview& review, Said& said) {
    constexpr double half = 0.5;
    constexpr int fewestBatches = 3;
    for (const PlantInReview& plant : review.plants) {
        if (plant.best.sure != HowSure::OneMethodOnly || plant.ratedBatches < fewestBatches) continue;
        const Arm& arm = armOf(plant, plant.best.method);
        const Limits& limits = arm.withSpread ? *arm.withSpread : *arm.asCounted;
        if (limits.high >= half) continue;
        said.push_back({.kind = AdviceKind::OtherMethod,
                        .inWords = plant.name + ": " + methodOf(plant, plant.best.method) + " rooted " +
                                   std::to_string(arm.rooted) + " of " + std::to_string(arm.assessed) +
                                   "; stick some by another method on the same day."});
        return;
    }
}

}  // namespace

void addAdvice(ReviewWork& work, SeasonReview& review) {
    if (review.counts.batches == 0) return;
    Said trials, better, losses, money, missing, unusual, others;
    adviseTrials(review, work, trials);
    adviseBetterMethods(review, better);
    adviseOnLosses(review, losses);
    adviseOnMoney(review, money);
    adviseOnRecords(review, missing);
    adviseOnUnusual(review, unusual);
    adviseOtherMethods(review, others);
    // The first of each kind, then the second ones.
    const std::array inOrder{&trials, &better, &losses, &money, &missing, &unusual, &others};
    for (std::size_t turn = 0; review.next.size() < mostAdvice && turn < mostAdvice; ++turn)
        for (const Said* said : inOrder)
            if (turn < said->size() && review.next.size() < mostAdvice) review.next.push_back((*said)[turn]);
}

}  // namespace core
