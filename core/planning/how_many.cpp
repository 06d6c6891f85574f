// SPDX-License-Identifier: MIT
#include "core/planning/how_many.h"

#include <algorithm>
#include <cmath>

#include "core/comparison/english.h"
#include "core/field_faults.h"
#include "stats/planning/predictive_count.h"

namespace core {
namespace {

constexpr int mostToStick = 20'000;  // as far as stats goes

double livesOnOf(const HowManyQuestion& question) {
    return question.pottedLive * question.rootedInTime;
}

std::optional<Refusal> faultInPart(const std::string& field, double value) {
    if (value > 0 && value <= 1) return {};
    return outOfRange(field, figureText(value), "more than 0 and up to 1");
}

std::string chanceInWords(double chance) {
    if (chance >= 0.995) return "more than 99 in 100";
    return std::to_string(static_cast<int>(std::floor(100 * chance + 1e-9))) + " in 100";
}

/// From the fewest that could do to a good deal more than are needed, some fifty numbers.
std::vector<int> numbersToShow(const HowMany& answer) {
    constexpr int about = 48;
    const int first = answer.question.wanted, stick = *answer.stick;
    const int last = std::min(mostToStick, std::max(answer.withATrayMore, stick + (stick + 2) / 3));
    const int stride = std::max(1, (last - first) / about);
    std::vector<int> numbers{stick, answer.withATrayMore};
    for (int number = first; number <= last; number += stride) numbers.push_back(number);
    std::ranges::sort(numbers);
    numbers.erase(std::unique(numbers.begin(), numbers.end()), numbers.end());
    return numbers;
}

void setCurve(const PastRecords& records, HowMany& answer) {
    const HowManyQuestion& question = answer.question;
    const std::vector<int> numbers = numbersToShow(answer);
    const std::vector<double> chances =
        stats::assuranceOfCounts(question.wanted, numbers, records.past, question.traySize, livesOnOf(question));
    for (std::size_t i = 0; i < numbers.size(); ++i) {
        answer.curve.push_back({.stuck = numbers[i], .chance = chances[i]});
        if (numbers[i] == answer.withATrayMore) answer.chanceWithATrayMore = chances[i];
    }
}

std::string trayMoreInWords(const HowMany& answer) {
    return "One tray of " + std::to_string(answer.question.traySize) + " more, " +
           std::to_string(answer.withATrayMore) + " in all, would make it " +
           chanceInWords(answer.chanceWithATrayMore) + ".";
}

std::string warningOn(const HowMany& answer, const PastRecords& records) {
    if (records.batches.empty() && !records.band)
        return "Nothing is known of this plant's strike rate, so the number has to allow for almost anything. Stick "
               "one tray first and learn from it.";
    if (!answer.stick || *answer.stick >= 10 * answer.question.wanted)
        return "The records are so few or so poor that most of this number is there for safety.";
    return {};
}

}  // namespace

Refusals faultsIn(const HowManyQuestion& question) {
    constexpr int largestTray = 10'000;
    Refusals faults;
    collect(faults, faultInWhole("Wanted", question.wanted, 1, mostWanted));
    collect(faults, faultInShare("Assurance", question.assurance));
    collect(faults, faultInPart("Live after potting", question.pottedLive));
    collect(faults, faultInPart("Rooted in time", question.rootedInTime));
    collect(faults, faultInWhole("Tray size", question.traySize, 1, largestTray));
    collect(faults, faultInShare("Level", question.level));
    return faults;
}

Result<int> plainNumber(int wanted, double share) {
    Refusals faults;
    collect(faults, faultInWhole("Plants wanted", wanted, 1, mostWanted));
    if (!(share > 0 && share <= 1)) faults.push_back(outOfRange("Share", figureText(share), "more than 0 and up to 1"));
    if (!faults.empty()) return refused(std::move(faults));
    constexpr double rounding = 1e-9;  // 20 / 0.8 is 25
    return static_cast<int>(std::ceil(wanted / share - rounding));
}

std::string howManyInWords(const HowMany& answer) {
    const HowManyQuestion& question = answer.question;
    const std::string wanted = counted(question.wanted, "plant", "plants");
    if (!answer.stick)
        return "Even " + std::to_string(mostToStick) + " cuttings would not give " + wanted + " with a chance of " +
               chanceInWords(question.assurance) + ".";
    std::string words = "Stick " + std::to_string(*answer.stick) + " for " + wanted +
                        ": the chance of that many or more is " + chanceInWords(*answer.achieved);
    if (question.pottedLive < 1)
        words += ", when " + std::to_string(perHundred(question.pottedLive)) + " of 100 live on after potting";
    words += ". About " + std::to_string(std::lround(answer.expectedPlants)) + " is what to expect";
    if (answer.expectedRange)
        words += ", anything from " + std::to_string(answer.expectedRange->low) + " to " +
                 std::to_string(answer.expectedRange->high) + " may come of it (" + levelWords(question.level) +
                 " prediction interval)";
    return words + ".";
}

Result<HowMany> howManyToStick(const HowManyQuestion& question, const PastRecords& records) {
    if (Refusals faults = faultsIn(question); !faults.empty()) return refused(std::move(faults));
    HowMany answer;
    answer.question = question;
    const stats::CountToStick count = stats::countForPastBatches(question.wanted, records.past, question.traySize,
                                                                 question.assurance, livesOnOf(question));
    answer.stick = count.count;
    answer.achieved = count.achieved;
    if (answer.stick) {
        answer.trays = (*answer.stick + question.traySize - 1) / question.traySize;
        answer.expectedPlants = *answer.stick * records.meanRate * livesOnOf(question);
        answer.expectedRange = stats::rangeForPastBatches(*answer.stick, records.past, question.traySize,
                                                          question.level, livesOnOf(question));
        answer.withATrayMore = std::min(mostToStick, *answer.stick + question.traySize);
        setCurve(records, answer);
        answer.trayMoreInWords = trayMoreInWords(answer);
    }
    answer.answerInWords = howManyInWords(answer);
    answer.recordsInWords = restsOnInWords(records);
    answer.warning = warningOn(answer, records);
    return answer;
}

}  // namespace core
