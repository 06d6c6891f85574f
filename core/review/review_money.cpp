// SPDX-License-Identifier: MIT
// What the batches stuck in the span cost, what that is for each rooted plant, and what stood empty meanwhile.
#include <algorithm>
#include <tuple>

#include "core/money/costs_of_batches.h"
#include "core/money/worth_it.h"
#include "core/review/review_parts.h"

namespace core {
namespace {

bool isSameThing(const StoodEmpty& one, const StoodEmpty& other) {
    return std::tie(one.method, one.station, one.medium, one.treatment, one.part, one.what) ==
           std::tie(other.method, other.station, other.medium, other.treatment, other.part, other.what);
}

CostsOfBatches costsUntil(Date day, const ReviewRecords& records, const std::stop_token& stop) {
    return costsOfBatches({.shelves = records.shelves,
                           .batches = records.batches,
                           .sessions = records.sessions,
                           .care = records.care,
                           .expenses = records.expenses,
                           .today = day,
                           .dayStart = records.dayStart},
                          stop);
}

/// What stood empty up to the end of the span, less what had before it began.
std::vector<StoodEmpty> emptyWithin(const std::vector<StoodEmpty>& untilEnd, const std::vector<StoodEmpty>& before) {
    constexpr double negligible = 1e-9;
    std::vector<StoodEmpty> within;
    for (StoodEmpty each : untilEnd) {
        for (const StoodEmpty& earlier : before) {
            if (!isSameThing(each, earlier)) continue;
            each.days -= earlier.days;
            each.amount -= earlier.amount;
        }
        if (each.days > 0 && each.amount > negligible) within.push_back(std::move(each));
    }
    std::ranges::stable_sort(within, std::greater(), &StoodEmpty::amount);
    return within;
}

void addSpent(const ReviewWork& work, const CostsOfBatches& costs, ReviewMoney& money) {
    std::vector<bool> isConcerned(costs.missing.size());
    for (const BatchRecord* record : work.inSpan) {
        const CostOfBatch* cost = costs.of(record->batch.id);
        if (cost == nullptr) continue;
        money.spent += cost->parts;
        if (!cost->lines.empty()) ++money.batches;
        for (const std::size_t missing : cost->missing) isConcerned[missing] = true;
    }
    for (std::size_t i = 0; i < isConcerned.size(); ++i)
        if (isConcerned[i]) money.missing.push_back(costs.missing[i]);
}

}  // namespace

void addMoney(const ReviewWork& work, SeasonReview& review) {
    const ReviewRecords& records = work.records;
    const CostsOfBatches costs = costsUntil(records.today, records, work.stop);
    if (!costs.isAnythingPriced || work.isStopped()) return;
    work.tellShare(0.76);
    const CostsOfBatches before = costsUntil(addDays(work.question.from, -1), records, work.stop);
    const bool isOver = work.question.until < records.today;
    const CostsOfBatches untilEnd = isOver ? costsUntil(work.question.until, records, work.stop) : CostsOfBatches{};
    if (work.isStopped()) return;
    work.tellShare(0.82);
    ReviewMoney money;
    addSpent(work, costs, money);
    money.stoodEmpty = emptyWithin(isOver ? untilEnd.stoodEmpty : costs.stoodEmpty, before.stoodEmpty);
    const WorthQuestion question{.from = work.question.from, .to = work.question.until, .bootstrapReplicates = 0};
    Result<Worth> worth = worthIt(question,
                                  {.shelves = records.shelves,
                                   .batches = records.batches,
                                   .pottings = records.pottings,
                                   .costs = costs,
                                   .today = records.today},
                                  work.stop);
    if (worth) money.worth = std::move(*worth);
    review.money = std::move(money);
}

}  // namespace core
