// SPDX-License-Identifier: MIT
// What was learned in the span: trials that were decided in it, methods that did better by more than luck, turning points, batches out of the
// ordinary.
#include <algorithm>
#include <map>
#include <unordered_set>

#include "core/comparison/english.h"
#include "core/comparison/spread.h"
#include "core/comparison/turning_point.h"
#include "core/review/review_parts.h"
#include "core/trial/trial_progress.h"

namespace core {
namespace {

/// With fewer, one odd batch at the end would pass for a turn.
constexpr std::size_t fewestForATurn = 6;

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

std::string methodInWords(MethodId method, const Shelves& shelves) {
    const Method* known = find(shelves.methods, method);
    return known != nullptr ? nameInWords(Factor::Method, known->name) : "no method";
}

/// Over all the batches of a plant by a method, those of earlier seasons too: a turn is seen against what went before.
void addTurningPoints(const PlantInReview& plant, ReviewWork& work, std::vector<Lesson>& lessons) {
    std::map<MethodId, std::vector<Course>> ofMethod;
    for (const BatchRecord* record : work.ofPlant[plant.plant])
        if (work.isInRates(*record))
            ofMethod[record->batch.method].push_back(courseOf(*record, plant.horizonDay, work.records.today));
    const double level = work.records.shelves.facts.level;
    for (const auto& [method, courses] : ofMethod) {
        if (work.isStopped()) return;
        if (courses.size() < fewestForATurn) continue;
        const auto turn = turningPointOf(
            courses, pooledSpreadOfOthers(work.records.batches, plant.plant, method, plant.horizonDay, level), level);
        if (!turn || !turn->isCalled() || !work.isInSpan(turn->likeliest.stuckOn)) continue;
        lessons.push_back({.kind = LessonKind::TurningPoint,
                           .about = plant.name + ", " + methodInWords(method, work.records.shelves),
                           .inWords = turn->inWords});
    }
}

}  // namespace

void addLessons(ReviewWork& work, SeasonReview& review) {
    addTrials(work, review.lessons);
    addClearDifferences(review, review.lessons);
    for (const PlantInReview& plant : review.plants) addTurningPoints(plant, work, review.lessons);
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
