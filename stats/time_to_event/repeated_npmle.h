// SPDX-License-Identifier: MIT
// competing_risks_npmle.h over and over for different choices of the same batches: what does not depend on the choice
// is done once. For cluster_bootstrap.h and curve_permutation_test.h.
#pragma once

#include <cstddef>
#include <span>
#include <stop_token>
#include <vector>

#include "stats/time_to_event/competing_risks_npmle.h"
#include "stats/time_to_event/innermost_intervals.h"
#include "stats/time_to_event/interval_mixture.h"

namespace stats {

class RepeatedNpmle {
  public:
    /// Each inner span is one batch. Observations as requireObservations() wants them; those of weight 0 are left out.
    explicit RepeatedNpmle(std::span<const std::span<const Observation>> batches);

    /// Batch b counted `times[b]` times (0 or more, at least one batch of positive weight; otherwise nothing is
    /// estimated).
    [[nodiscard]] CumulativeIncidence estimate(std::span<const double> times, const MixtureLimits& limits,
                                               const std::stop_token& stop = {});
    /// Estimates to come start from this one, which makes them quick where they resemble it.
    void startFrom(const CumulativeIncidence& estimate) { start_ = estimate; }

  private:
    struct WeightedRow {
        std::size_t row{};
        double weight{};
    };
    // The columns of the mixture: cause 1 in order of day, neither, cause 2 from the last day to the first. In this
    // order the columns of a row of cause 0 are neighbours too.
    struct Columns {
        int count1{};
        int count2{};
        int begin2{};  // also how many there are before cause 2
        [[nodiscard]] int count() const { return begin2 + count2; }
        [[nodiscard]] int place2(int interval) const { return begin2 + count2 - 1 - interval; }
    };

    void fillMixture(const Columns& columns);
    [[nodiscard]] std::vector<double> startingMasses(const Columns& columns) const;
    [[nodiscard]] CumulativeIncidence translated(const MixtureFit& fit, const Columns& columns) const;

    static std::vector<Observation> distinctRows(std::span<const std::span<const Observation>> batches);

    std::vector<Observation> rows_;
    std::vector<std::vector<WeightedRow>> batches_;
    InnermostIntervals cause1_, cause2_;
    std::vector<double> weights_;
    IntervalMixture mixture_;
    CumulativeIncidence start_;
};

}  // namespace stats
