// SPDX-License-Identifier: MIT
// What was learned in the span: trials that were decided in it, methods that did better by more than luck, batches out of the ordinary.
#include <algorithm>
#include <unordered_set>

#include "core/review/review_parts.h"
#include "core/trial/trial_progress.h"

namespace core {
namespace {

std::vector<BatchLine> linesOf(const Trial& trial, const ReviewRecords& records) {
    std::vector<BatchLine> lines;
    for (const BatchRecord& record : records.batches)
        if (record.batch.trial == trial.id)
            lines.push_back({.batch = record.batch, .tally = tallyOf(record.batch, record.checks, records.today)});
    return lines;
}

void addTrials(const ReviewWork& work, std::vector<Lesson>& lessons) {
    std::vector<std::pair<Date, Lesson>> decided;
    for (const Trial& trial : work.records.shelves.trials) {
        if (work.isStopped()) return;
        const TrialProgress progress =
            progressOf(trial, work.records.shelves, linesOf(trial, work.records), work.records.today);
        if (progress.stage != TrialStage::Decided || !work.isInSpan(*progress.decidedOn)) continue;
        const Result<Comparison> result = trialResult(trial, work.records.shelves, work.records.batches, work.stop);
        if (result)
            decided.push_back(
                {*progress.decidedOn, {.kind = LessonKind::Trial, .about = trial.name, .inWords = result->inWords}});
    }
    std::ranges::stable_sort(decided, {}, [](const auto& each) { return each.first; });
    for (auto& [day, lesson] : decided) lessons.push_back(std::move(lesson));
}

void addClearDifferences(const SeasonReview& review, std::vector<Lesson>& lessons) {
    for (const PlantInReview& plant : review.plants)
        for (const Pair& pair : plant.pairs)
            if (pair.verdict == Verdict::FirstBetter || pair.verdict == Verdict::SecondBetter)
                lessons.push_back({.kind = LessonKind::ClearDifference, .about = plant.name, .inWords = pair.inWords});
}

}  // namespace

void addLessons(ReviewWork& work, SeasonReview& review) {
    addTrials(work, review.lessons);
    addClearDifferences(review, review.lessons);
}

void addUnusualBatches(ReviewWork& work, SeasonReview& review) {
    review.falseAlarmRate = work.records.shelves.facts.falseAlarmRate;
    std::unordered_set<BatchId> asked;
    for (const BatchRecord* record : work.inSpan)
        if (!work.isInRunningTrial(record->batch)) asked.insert(record->batch.id);
    // None was looked at before it was stuck.
    const LossQuestion sinceThen{.from = work.question.from, .until = work.records.today};
    for (UnusualBatch& batch : outOfTheOrdinary(work.records.batches, work.records.shelves, sinceThen, work.stop))
        if (asked.contains(batch.batch)) review.unusual.push_back(std::move(batch));
}

}  // namespace core
