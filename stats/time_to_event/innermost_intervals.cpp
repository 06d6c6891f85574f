// SPDX-License-Identifier: MIT
#include "stats/time_to_event/innermost_intervals.h"

#include <algorithm>

namespace stats {
namespace {

constexpr int kExactStart = 0;
constexpr int kFinish = 1;
constexpr int kOpenStart = 2;

int startRank(const Observation& row) {
    return row.after == row.by ? kExactStart : kOpenStart;
}

}  // namespace

InnermostIntervals::InnermostIntervals(std::span<const Observation> rows, int cause) {
    for (const Observation& row : rows) {
        if (row.cause == cause || row.cause == 0) ends_.push_back({.day = row.after, .rank = startRank(row)});
        if (row.cause == cause) ends_.push_back({.day = row.by, .rank = kFinish});
    }
    std::sort(ends_.begin(), ends_.end());
    ends_.erase(std::unique(ends_.begin(), ends_.end()), ends_.end());
    const auto indexOf = [this](const End& end) {
        return static_cast<int>(std::lower_bound(ends_.begin(), ends_.end(), end) - ends_.begin());
    };
    for (const Observation& row : rows) {
        RowEnds ends;
        if (row.cause == cause || row.cause == 0) ends.start = indexOf({.day = row.after, .rank = startRank(row)});
        if (row.cause == cause) ends.finish = indexOf({.day = row.by, .rank = kFinish});
        rowEnds_.push_back(ends);
    }
    isPresent_.resize(ends_.size());
    startedBefore_.resize(ends_.size());
    finishedBy_.resize(ends_.size());
}

void InnermostIntervals::choose(std::span<const double> weights) {
    std::fill(isPresent_.begin(), isPresent_.end(), 0);
    for (std::size_t row = 0; row < rowEnds_.size(); ++row) {
        if (!(weights[row] > 0)) continue;
        if (rowEnds_[row].start >= 0) isPresent_[static_cast<std::size_t>(rowEnds_[row].start)] = 1;
        if (rowEnds_[row].finish >= 0) isPresent_[static_cast<std::size_t>(rowEnds_[row].finish)] = 1;
    }
    intervals_.clear();
    // A start is open until a finish follows it with no other end between.
    std::size_t openStart = ends_.size();
    for (std::size_t e = 0; e < ends_.size(); ++e) {
        startedBefore_[e] = static_cast<int>(intervals_.size());
        if (isPresent_[e] != 0) {
            const bool isFinish = ends_[e].rank == kFinish;
            if (isFinish && openStart < ends_.size()) {
                intervals_.push_back({.left = ends_[openStart].day, .right = ends_[e].day});
            }
            openStart = isFinish ? ends_.size() : e;
        }
        finishedBy_[e] = static_cast<int>(intervals_.size());
    }
}

IntervalRun InnermostIntervals::runOf(std::size_t row) const {
    const RowEnds& ends = rowEnds_[row];
    const int all = static_cast<int>(intervals_.size());
    return {.first = ends.start >= 0 ? startedBefore_[static_cast<std::size_t>(ends.start)] : all,
            .last = (ends.finish >= 0 ? finishedBy_[static_cast<std::size_t>(ends.finish)] : all) - 1};
}

}  // namespace stats
