// SPDX-License-Identifier: MIT
// The tables that an exact test of two rates rejects. Only for exact_power.cpp.
#pragma once

#include <vector>

#include "stats/two_proportions/fisher_ordering.h"

namespace stats {

/// All tables of two arms with their Fisher p, by total.
class FisherTables {
  public:
    FisherTables(int trials1, int trials2, FisherSide side);

    [[nodiscard]] FisherSide side() const { return side_; }
    /// For each total, the probability of the tables with a p of at most the threshold.
    [[nodiscard]] std::vector<double> regionGivenTotal(double threshold) const;
    /// The largest threshold whose tables have probability of at most alpha, whatever rate the arms share.
    [[nodiscard]] double thresholdOfBoschloo(double alpha) const;

  private:
    friend class CriticalRegion;
    int trials1_, trials2_;
    FisherSide side_;
    std::vector<int> first_;               // by total: first arm's successes in the first table
    std::vector<std::vector<double>> ps_;  // by total
};

/// By total, tables from an end of the range: up to `low` successes in the first arm, and from `high` up.
class CriticalRegion {
  public:
    /// Nothing rejected.
    CriticalRegion(int trials1, int trials2);
    /// Adds the tables with a p of at most the threshold.
    void add(const FisherTables& tables, double threshold);

    [[nodiscard]] double probability(double rate1, double rate2) const;
    /// Its largest probability when both rates are one.
    [[nodiscard]] double size() const;

  private:
    struct Ends {
        int low, high;
    };
    /// Sum of weight(successes1) over the region's tables of this total.
    template <class Weight>
    [[nodiscard]] double sumOver(int total, Weight weight) const;

    int trials1_, trials2_;
    std::vector<Ends> ends_;
};

}  // namespace stats
