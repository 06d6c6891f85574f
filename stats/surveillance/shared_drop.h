// SPDX-License-Identifier: MIT
// Did several batches do worse together? How much likelier the counts are if all batches of a set share one drop in the odds of success than
// if nothing but luck is at work, given what the batches outside the set say of each group's usual rate. One batch: predictive_tail.h.
//
//   const SharedDrop drop(batches, groups, correlation);
//   const double ratio = std::exp(drop.logLikelihoodRatio(members));
#pragma once

#include <cstddef>
#include <span>
#include <vector>

#include "stats/overdispersion/tray.h"

namespace stats {

struct GroupedTray {
    Tray tray{};
    int group{};  // those of one group have one usual rate
};

struct ForetoldCount {
    double expected{};
    double variance{};  // of luck, spread between batches and doubt about the usual rate
};

/// Counts are beta-binomial with one correlation. A group's usual rate has Jeffreys's law before the batches outside the set are counted. The
/// drop has a half-normal law with a standard deviation of 1 on the log-odds: it holds a fall from 75 to 45 in 100 (1.3) for ordinary and one
/// to 13 in 100 (3) for the most (common practice, no source).
///
/// Since the batches outside the set count the same under both, this is the likelihood ratio of all batches: a set that leaves out some that
/// did as poorly, or takes in many that did not, has the smaller one.
///
/// Domain    0 <= successes <= trials; 0 <= group < groups; 0 <= correlation < 1; members are indices of batches, each once; else
///           std::domain_error. Empty trays say nothing.
/// Assumes   batches independent given their group's rate.
/// Accuracy  the rate on 51 points of the log-odds from -5 to 5, the drop on 16 from 0 to 3, by equal steps: the log ratio within 0.05 of
///           the integrals where a group has about five trays of 20, within 0.1 where it has 60, at a correlation of 0.05 or more.
/// Source    Bayes factor of a nested shift: Kass and Raftery (1995), J. Am. Stat. Assoc. 90, 773-795 (from memory).
class SharedDrop {
  public:
    SharedDrop(std::span<const GroupedTray> batches, int groups, double correlation);

    /// 0 for no members, or where nothing of their groups is known on either side.
    [[nodiscard]] double logLikelihoodRatio(std::span<const std::size_t> members) const;
    /// What the batches outside the set foretell for each member, in order; the last is that for their sum, whose doubt about a rate is shared.
    [[nodiscard]] std::vector<ForetoldCount> foretold(std::span<const std::size_t> members) const;

  private:
    using Row = std::vector<double>;
    [[nodiscard]] std::vector<Row> outside(std::span<const std::size_t> members) const;

    std::vector<GroupedTray> batches_;
    double correlation_{};
    std::vector<Row> likelihood_;  // of each batch: log, over the rates and beyond them by the largest drop
    std::vector<Row> together_;    // of each group, with the prior, over the rates
};

}  // namespace stats
