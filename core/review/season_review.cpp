// SPDX-License-Identifier: MIT
#include "core/review/season_review.h"

#include <algorithm>

#include "core/comparison/english.h"
#include "core/comparison/rate_interval.h"
#include "core/comparison/spread.h"
#include "core/planning/past_records.h"
#include "core/review/review_parts.h"
#include "core/trial/trial_progress.h"

namespace core {
namespace {

Refusals faultsInSpan(const ReviewQuestion& question) {
    Refusals faults;
    for (const auto& [field, day] : {std::pair("From", question.from), std::pair("Until", question.until)})
        if (!day.ok())
            faults.push_back({.field = field,
                              .value = {},
                              .allowed = "a day",
                              .sentence = std::string(field) + " is no day of the calendar."});
    if (!faults.empty() || question.from <= question.until) return faults;
    const std::string from = isoText(question.from), until = isoText(question.until);
    faults.push_back({.field = "Until",
                      .value = until,
                      .allowed = from + " or later",
                      .sentence = "Until is " + until + "; a span ends on its first day, " + from + ", or later."});
    return faults;
}

std::string reviewInWords(const SeasonReview& review) {
    const ReviewCounts& counts = review.counts;
    if (counts.batches == 0) return "Nothing was stuck in this span, so there is nothing to look back on.";
    std::string words = counted(counts.stuck, "cutting", "cuttings") + " stuck in " +
                        counted(counts.batches, "batch", "batches") + ": so far " + std::to_string(counts.rooted) +
                        " rooted, " + std::to_string(counts.lost) + " lost, ";
    if (counts.withdrawn > 0) words += std::to_string(counts.withdrawn) + " withdrawn, ";
    words += std::to_string(counts.undecided) + " undecided.";
    std::vector<std::string> clear;
    int compared = 0;
    for (const PlantInReview& plant : review.plants) {
        if (plant.best.sure == HowSure::BetterThanAll) clear.push_back(plant.name);
        if (plant.best.sure > HowSure::OneMethodOnly) ++compared;
    }
    if (compared == 0) return words + " No plant has rates of two methods, so no method is shown to be better.";
    const std::string of = counted(compared, "plant", "plants") + " with two methods or more, ";
    if (clear.empty()) return words + " Of " + of + "none has a method that is clearly better than the others.";
    return words + " Of " + of + counted(static_cast<int>(clear.size()), "has", "have") +
           " a method that did better than the others by more than luck would explain: " + listed(clear) + ".";
}

}  // namespace

ReviewWork::ReviewWork(const ReviewQuestion& asked, const ReviewRecords& given, const std::stop_token& stopping,
                       const std::function<void(double)>& tell)
    : question(asked), records(given), stop(stopping), tell_(tell) {
    for (const BatchRecord& record : records.batches) {
        if (!isInSpan(record.batch.stuckOn)) continue;
        inSpan.push_back(&record);
        ofPlant[record.batch.plant];
    }
    for (const BatchRecord& record : records.batches)
        if (const auto plant = ofPlant.find(record.batch.plant); plant != ofPlant.end())
            plant->second.push_back(&record);
    std::vector<BatchLine> ofTrials;
    for (const BatchRecord& record : records.batches)
        if (record.batch.trial.isSet())
            ofTrials.push_back({.batch = record.batch, .tally = tallyOf(record.batch, record.checks, records.today)});
    for (const Trial& trial : records.shelves.trials) {
        if (!trial.factor) continue;
        const TrialStage stage = progressOf(trial, records.shelves, ofTrials, records.today).stage;
        if (stage == TrialStage::Sticking || stage == TrialStage::Watched) running_.insert(trial.id);
    }
}

void ReviewWork::tellShare(double share) const {
    if (tell_) tell_(share);
}

bool ReviewWork::isInSpan(Date day) const {
    return question.from <= day && day <= question.until && day <= records.today;
}

int ReviewWork::horizonOf(PlantId plant) const {
    ComparisonQuestion ofPlantOnly;
    ofPlantOnly.plant = plant;
    return horizonFor(ofPlantOnly, records.shelves, {}).day;
}

bool ReviewWork::isInRunningTrial(const Batch& batch) const {
    return batch.trial.isSet() && running_.contains(batch.trial);
}

bool ReviewWork::isAtHorizon(const Batch& batch) const {
    return addDays(batch.stuckOn, horizonOf(batch.plant)) <= records.today;
}

bool ReviewWork::isInRates(const BatchRecord& record) const {
    const int horizonDay = horizonOf(record.batch.plant);
    return !isInRunningTrial(record.batch) &&
           isWatchedToTheEnd(courseOf(record, horizonDay, records.today), horizonDay);
}

const stats::PooledSpread& ReviewWork::spreadAt(int horizonDay) {
    const auto known = spreads_.find(horizonDay);
    if (known != spreads_.end()) return known->second;
    return spreads_.emplace(horizonDay, pooledSpreadOf(records.batches, horizonDay, records.shelves.facts.level))
        .first->second;
}

Result<SeasonReview> seasonReview(const ReviewQuestion& question, const ReviewRecords& records,
                                  const std::stop_token& stop, const std::function<void(double)>& tell) {
    if (Refusals faults = faultsInSpan(question); !faults.empty()) return refused(std::move(faults));
    SeasonReview review{.from = question.from,
                        .until = question.until,
                        .today = records.today,
                        .level = records.shelves.facts.level,
                        .interval = intervalOf(records.shelves.facts)};
    ReviewWork work(question, records, stop, tell);
    const auto parts = {
        std::pair(0.05, std::function([&] { addCounts(work, review); })),
        std::pair(0.4, std::function([&] { addPlants(work, review); })),
        std::pair(0.55, std::function([&] { addUnusualBatches(work, review); })),
        std::pair(0.7, std::function([&] { addLessons(work, review); })),
        std::pair(0.9, std::function([&] { addMoney(work, review); })),
        std::pair(1.0, std::function([&] { addAdvice(work, review); })),
    };
    for (const auto& [share, add] : parts) {
        if (work.isStopped()) break;
        add();
        work.tellShare(share);
    }
    review.wasStopped = work.isStopped();
    review.inWords = reviewInWords(review);
    return review;
}

}  // namespace core
