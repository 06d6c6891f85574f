// SPDX-License-Identifier: MIT
// The parts that a season review is put together from, and what they share. For core/review/season_review.h only.
#pragma once

#include <functional>
#include <map>
#include <set>
#include <vector>

#include "core/comparison/arm_records.h"
#include "core/review/season_review.h"
#include "stats/overdispersion/intraclass_correlation.h"

namespace core {

/// Batches sorted out once for all parts.
class ReviewWork {
  public:
    ReviewWork(const ReviewQuestion& question, const ReviewRecords& records, const std::stop_token& stop,
               const std::function<void(double)>& tell);

    const ReviewQuestion& question;
    const ReviewRecords& records;
    const std::stop_token& stop;
    std::vector<const BatchRecord*> inSpan{};
    std::map<PlantId, std::vector<const BatchRecord*>> ofPlant{};  // of the whole logbook, where any is in the span

    [[nodiscard]] bool isStopped() const { return stop.stop_requested(); }
    void tellShare(double share) const;
    [[nodiscard]] bool isInSpan(Date day) const;
    [[nodiscard]] int horizonOf(PlantId plant) const;
    /// Of a planned trial that isn't decided yet: how its arms do is told at its horizon.
    [[nodiscard]] bool isInRunningTrial(const Batch& batch) const;
    [[nodiscard]] bool isAtHorizon(const Batch& batch) const;
    /// Watched to the end, and of no trial that still goes on.
    [[nodiscard]] bool isInRates(const BatchRecord& record) const;
    /// Judged by the whole logbook.
    [[nodiscard]] const stats::PooledSpread& spreadAt(int horizonDay);

  private:
    std::function<void(double)> tell_;
    std::set<TrialId> running_;
    std::map<int, stats::PooledSpread> spreads_;
};

void addCounts(const ReviewWork& work, SeasonReview& review);
void addPlants(ReviewWork& work, SeasonReview& review);
void addLessons(ReviewWork& work, SeasonReview& review);
void addUnusualBatches(ReviewWork& work, SeasonReview& review);
void addMoney(const ReviewWork& work, SeasonReview& review);
/// From everything that the others added.
void addAdvice(ReviewWork& work, SeasonReview& review);

/// Judged by `pairs` of `methods`, which are of one plant.
[[nodiscard]] BestMethod bestOf(const std::vector<Arm>& methods, const std::vector<Pair>& pairs, int horizonDay);

/// Below so many cuttings whose fate is known a rate isn't spoken of.
inline constexpr int fewestForARate = 5;

}  // namespace core
