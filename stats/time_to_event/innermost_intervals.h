// SPDX-License-Identifier: MIT
// Where an event can have come, as far as the data tell: the innermost intervals of one cause. Only for
// repeated_npmle.h.
#pragma once

#include <cstddef>
#include <span>
#include <vector>

#include "stats/time_to_event/observation.h"

namespace stats {

struct InnermostInterval {
    double left{};
    double right{};
};

/// Neighbouring innermost intervals first .. last; none where last < first.
struct IntervalRun {
    int first{};
    int last{};
};

/// Sorts the ends of all rows once; for any choice among the rows it then finds the innermost intervals in one pass.
///
/// Ends on the same day are in the order: start of an exact day, end, start of an open interval. So (0, 7] and (7, 14]
/// share no day, an exact day 7 is in (0, 7] and not in (7, 14], and an event on a day is counted before a withdrawal
/// on it.
class InnermostIntervals {
  public:
    InnermostIntervals(std::span<const Observation> rows, int cause);

    /// Finds the intervals for those rows whose weight is positive.
    void choose(std::span<const double> weights);
    [[nodiscard]] const std::vector<InnermostInterval>& intervals() const { return intervals_; }
    /// The intervals in which the event of a chosen row of this cause can have come, or, for a row of cause 0, can
    /// still come.
    [[nodiscard]] IntervalRun runOf(std::size_t row) const;

  private:
    struct End {
        double day{};
        int rank{};
        auto operator<=>(const End&) const = default;
    };
    struct RowEnds {
        int start{-1};   // index into ends_; -1 where the row says nothing of this cause
        int finish{-1};  // -1 where there is none
    };

    std::vector<End> ends_;
    std::vector<RowEnds> rowEnds_;
    std::vector<char> isPresent_;
    std::vector<InnermostInterval> intervals_;
    std::vector<int> startedBefore_, finishedBy_;  // for each end: intervals that start before it, that finish by it
};

}  // namespace stats
