// SPDX-License-Identifier: MIT
// What was stuck in the span and what became of it.
#include <algorithm>
#include <chrono>
#include <unordered_set>

#include "core/review/review_parts.h"

namespace core {
namespace {

/// Longer spans are counted by year, or the table would be longer than the page.
constexpr int mostDaysByMonth = 550;

Date lastDayOfPeriod(Date day, bool isByMonth) {
    if (isByMonth) return day.year() / day.month() / std::chrono::last;
    return day.year() / std::chrono::December / 31;
}

/// Every month from the first to the last in which anything was stuck, those without a batch among them.
std::vector<ReviewMonth> monthsOf(const ReviewWork& work) {
    std::vector<ReviewMonth> months;
    if (work.inSpan.empty()) return months;
    const auto byDay = [](const BatchRecord* record) { return record->batch.stuckOn; };
    const Date first = byDay(*std::ranges::min_element(work.inSpan, {}, byDay));
    const Date last = byDay(*std::ranges::max_element(work.inSpan, {}, byDay));
    const bool isByMonth = daysBetween(first, last) <= mostDaysByMonth;
    for (Date from = first; from <= last; from = addDays(months.back().until, 1)) {
        const Date begin =
            isByMonth ? Date(from.year() / from.month() / 1) : Date(from.year() / std::chrono::January / 1);
        months.push_back({.from = begin, .until = lastDayOfPeriod(from, isByMonth)});
    }
    for (const BatchRecord* record : work.inSpan) {
        const auto month = std::ranges::lower_bound(months, record->batch.stuckOn, {}, &ReviewMonth::until);
        month->counts.add(tallyOf(record->batch, record->checks, work.records.today));
    }
    for (ReviewMonth& month : months) {
        month.from = std::max(month.from, work.question.from);
        month.until = std::min(month.until, work.question.until);
    }
    return months;
}

/// A batch that isn't in the rates is counted here once, unless all of it was withdrawn or closed: then there is nothing to wait for.
void countLeftOut(const ReviewWork& work, const BatchRecord& record, const Tally& tally, SeasonReview& review) {
    if (work.isInRunningTrial(record.batch)) {
        ++review.trialBatches;
    } else if (!work.isInRates(record) && !isClosed(record.batch, tally)) {
        ++(work.isAtHorizon(record.batch) ? review.unwatchedBatches : review.youngBatches);
    }
}

std::vector<BatchRecord> copiesOf(const std::vector<const BatchRecord*>& records) {
    std::vector<BatchRecord> copies;
    copies.reserve(records.size());
    for (const BatchRecord* record : records) copies.push_back(*record);
    return copies;
}

}  // namespace

void ReviewCounts::add(const Tally& tally) {
    ++batches;
    stuck += tally.stuck;
    rooted += tally.rooted;
    lost += tally.lost;
    withdrawn += tally.withdrawn;
    undecided += tally.undecided();
}

void addCounts(const ReviewWork& work, SeasonReview& review) {
    std::unordered_set<SessionId> sessions;
    const Date end = std::min(work.question.until, work.records.today);
    for (const BatchRecord* record : work.inSpan) {
        const Batch& batch = record->batch;
        const Tally tally = tallyOf(batch, record->checks, work.records.today);
        review.counts.add(tally);
        sessions.insert(batch.session);
        review.undecidedAtEnd += tallyOf(batch, record->checks, end).undecided();
        countLeftOut(work, *record, tally, review);
    }
    review.sessions = static_cast<int>(sessions.size());
    review.months = monthsOf(work);
    review.losses = lossesOver(copiesOf(work.inSpan), work.records.shelves, {.until = work.records.today}, work.stop);
}

}  // namespace core
