// SPDX-License-Identifier: MIT
#include "stats/time_to_event/cluster_bootstrap.h"

#include <algorithm>
#include <cmath>
#include <limits>

#include "stats/numeric/distribution_tails.h"
#include "stats/numeric/require.h"
#include "stats/time_to_event/repeated_npmle.h"

namespace stats {
namespace {

constexpr MixtureLimits kReplicateLimits{.wantedGap = 1e-8, .convergedGap = 1e-8, .iterations = 200};

void requireQuestion(const BootstrapQuestion& question) {
    requireLevel("clusterBootstrap", question.level);
    if (question.replicates < 1) throwDomainError("clusterBootstrap", "replicates", question.replicates, "1 or more");
    for (const WantedQuantile& wanted : question.quantiles) {
        if (!(wanted.target > 0 && wanted.target <= 1)) {
            throwDomainError("clusterBootstrap", "target", wanted.target, "above 0 and at most 1");
        }
    }
    for (const double day : question.days) {
        if (!(day >= 0)) throwDomainError("clusterBootstrap", "day", day, "0 or more");
    }
}

// One figure over all replicates, from which two percentiles are wanted.
struct Figure {
    std::vector<double> lows, highs;
};

// The smallest value whose share of all values reaches `share`.
double percentile(std::vector<double>& values, double share) {
    const double size = static_cast<double>(values.size());
    const double rank = std::clamp(std::ceil(share * size - 1e-9), 1.0, size);
    const auto place = values.begin() + static_cast<std::ptrdiff_t>(rank) - 1;
    std::nth_element(values.begin(), place, values.end());
    return *place;
}

// The mirror image of percentile() for the upper end: as many values lie above it as below the lower one.
Interval percentileInterval(Figure& figure, double level) {
    const double tail = (1 - level) / 2;
    for (double& high : figure.highs) high = -high;
    return {.low = percentile(figure.lows, tail), .high = -percentile(figure.highs, tail)};
}

class Collector {
  public:
    Collector(const BootstrapQuestion& question, std::size_t batches)
        : question_(question),
          bandLevel_(expandedPercentileLevel(question.level, static_cast<int>(batches))),
          quantiles_(question.quantiles.size()),
          reached_(question.quantiles.size(), 0),
          bands1_(question.days.size()),
          bands2_(question.days.size()) {}

    void take(const CumulativeIncidence& estimate) {
        constexpr double kNever = std::numeric_limits<double>::infinity();
        for (std::size_t q = 0; q < quantiles_.size(); ++q) {
            const auto day = quantileDay(estimate.cause1, question_.quantiles[q].target, question_.quantiles[q].of);
            reached_[q] += day ? 1 : 0;
            quantiles_[q].lows.push_back(day ? day->after : kNever);
            quantiles_[q].highs.push_back(day ? day->by : kNever);
        }
        for (std::size_t d = 0; d < question_.days.size(); ++d) {
            takeShare(cumulativeShare(estimate.cause1, question_.days[d]), bands1_[d]);
            takeShare(cumulativeShare(estimate.cause2, question_.days[d]), bands2_[d]);
        }
        ++replicates_;
    }

    [[nodiscard]] CurveBootstrap summary() {
        CurveBootstrap result;
        result.replicates = replicates_;
        result.wasStopped = replicates_ < question_.replicates;
        if (replicates_ == 0) return result;
        for (std::size_t q = 0; q < quantiles_.size(); ++q) {
            result.quantiles.push_back({.limits = percentileInterval(quantiles_[q], question_.level),
                                        .shareReached = reached_[q] / static_cast<double>(replicates_)});
        }
        for (Figure& band : bands1_) result.bands1.push_back(percentileInterval(band, bandLevel_));
        for (Figure& band : bands2_) result.bands2.push_back(percentileInterval(band, bandLevel_));
        return result;
    }

  private:
    static void takeShare(const ShareBounds& share, Figure& band) {
        band.lows.push_back(share.atLeast);
        band.highs.push_back(share.atMost);
    }

    const BootstrapQuestion& question_;
    double bandLevel_;
    std::vector<Figure> quantiles_;
    std::vector<int> reached_;
    std::vector<Figure> bands1_, bands2_;
    int replicates_{};
};

std::vector<std::span<const Observation>> batchesWithWeight(std::span<const std::vector<Observation>> batches) {
    std::vector<std::span<const Observation>> result;
    for (const auto& batch : batches) {
        requireObservations("clusterBootstrap", batch);
        const bool hasWeight = std::any_of(batch.begin(), batch.end(), [](const auto& one) { return one.weight > 0; });
        if (hasWeight) result.emplace_back(batch);
    }
    return result;
}

}  // namespace

double expandedPercentileLevel(double level, int batches) {
    requireLevel("expandedPercentileLevel", level);
    if (batches < 2) throwDomainError("expandedPercentileLevel", "batches", batches, "2 or more");
    const double reach = std::sqrt(batches / (batches - 1.0)) * studentQuantileOfLevel(level, batches - 1);
    return std::erf(reach / std::sqrt(2.0));
}

std::optional<CurveBootstrap> clusterBootstrap(std::span<const std::vector<Observation>> batches,
                                               const BootstrapQuestion& question, SeededRandom& random,
                                               std::stop_token stop) {
    requireQuestion(question);
    const auto counted = batchesWithWeight(batches);
    if (counted.size() < 2) return {};
    RepeatedNpmle npmle(counted);
    std::vector<double> times(counted.size(), 1.0);
    npmle.startFrom(npmle.estimate(times, kReplicateLimits, stop));
    Collector collector(question, counted.size());
    for (int replicate = 0; replicate < question.replicates && !stop.stop_requested(); ++replicate) {
        std::fill(times.begin(), times.end(), 0.0);
        for (std::size_t draw = 0; draw < times.size(); ++draw) ++times[random.below(times.size())];
        collector.take(npmle.estimate(times, kReplicateLimits));
    }
    return collector.summary();
}

}  // namespace stats
