// SPDX-License-Identifier: MIT
// What a trial's result can't be taken for, and what to try next: notShownBy() and whatNext() of trial_progress.h.
#include <algorithm>

#include "core/comparison/english.h"
#include "core/trial/trial_progress.h"

namespace core {

namespace {

bool hasVerdict(const Comparison* result, std::initializer_list<Verdict> verdicts) {
    return result != nullptr && std::ranges::any_of(result->pairs, [&](const Pair& pair) {
               return std::ranges::find(verdicts, pair.verdict) != verdicts.end();
           });
}

int notKnownIn(const Comparison& result) {
    int notKnown = 0;
    for (const Arm& arm : result.arms) notKnown += arm.stuck - arm.assessed;
    return notKnown;
}

bool isShownAsGood(const Comparison* result) {
    return result != nullptr && std::ranges::any_of(result->pairs, [](const Pair& pair) {
               return (pair.firstAsGood && pair.firstAsGood->isShown) ||
                      (pair.secondAsGood && pair.secondAsGood->isShown);
           });
}

}  // namespace

std::vector<std::string> notShownBy(const Trial& trial, const TrialProgress& progress, const Comparison* result) {
    std::vector<std::string> sentences;
    if (hasVerdict(result, {Verdict::CannotTellMethodFromStation}))
        sentences.push_back(
            "Which way is better as such: an arm that stood at one station can't be told from that station.");
    if (hasVerdict(result, {Verdict::NoClearDifference}) && trial.measure == TrialMeasure::MoreRooted)
        sentences.push_back("That the arms are alike: no clear difference is not the same as none.");
    if (trial.measure == TrialMeasure::AsGoodAs && result != nullptr && !isShownAsGood(result))
        sentences.push_back("That one arm is as good as the other: the records leave room for more than the margin.");
    if (const int notKnown = result == nullptr ? 0 : notKnownIn(*result); notKnown > 0)
        sentences.push_back("What became of " + counted(notKnown, "cutting", "cuttings") + " by day " +
                            std::to_string(result->horizonDay) +
                            ": nobody looked then, or they were withdrawn before; they are left out of the rates.");
    if (!trial.changes.empty())
        sentences.push_back(
            "What it would have shown as first planned: it was changed when somebody had looked already.");
    if (progress.others > 0)
        sentences.push_back("What " + counted(progress.others, "batch", "batches") +
                            " under its name would add that belong to none of its arms.");
    sentences.push_back("How other plants, stations or seasons would do: these cuttings are all that it is about.");
    sentences.push_back("How the rooted ones grow on: it counts roots at day " + std::to_string(progress.horizonDay) +
                        " and nothing after.");
    return sentences;
}

std::vector<std::string> whatNext(const Trial& trial, const TrialProgress& progress, const Comparison* result) {
    if (progress.stage != TrialStage::Decided || result == nullptr)
        return {"Look at every batch on day " + std::to_string(progress.horizonDay) +
                " after it was stuck, and write down every cutting: what isn't seen then is not known."};
    std::vector<std::string> sentences;
    if (hasVerdict(result, {Verdict::CannotTellMethodFromStation}))
        sentences.push_back("Give each arm two stations or more, or cross the arms over between sessions.");
    if (hasVerdict(result, {Verdict::TooFewBatches}))
        sentences.push_back("Stick it again, until each arm has three batches or more: then their luck can be judged.");
    if (hasVerdict(result, {Verdict::FirstBetter, Verdict::SecondBetter}))
        sentences.push_back("Repeat it once in another season before giving the poorer arm up.");
    if (hasVerdict(result, {Verdict::NoClearDifference}))
        sentences.push_back(
            trial.measure == TrialMeasure::AsGoodAs && isShownAsGood(result)
                ? "Take the arm that is simpler or cheaper, and watch its next batches."
                : "Repeat it with more batches rather than more cuttings in each, if the difference would "
                  "still matter.");
    return sentences;
}

}  // namespace core
