// SPDX-License-Identifier: MIT
#include "stats/overdispersion/tray_bootstrap.h"

#include <algorithm>
#include <compare>
#include <cstddef>

#include "stats/numeric/compensated_sum.h"
#include "stats/numeric/require.h"

namespace stats {
namespace {

struct PooledSum {
    long long trials{}, successes{};
    double probability{};

    [[nodiscard]] bool isBefore(const PooledSum& other) const {
        return trials != other.trials ? trials < other.trials : successes < other.successes;
    }
};

// Two sorted lists into one, equal sums joined.
std::vector<PooledSum> joinedSums(const std::vector<PooledSum>& first, const std::vector<PooledSum>& second) {
    std::vector<PooledSum> result;
    result.reserve(first.size() + second.size());
    auto one = first.begin(), other = second.begin();
    while (one != first.end() || other != second.end()) {
        if (other == second.end() || (one != first.end() && one->isBefore(*other))) {
            result.push_back(*one++);
        } else if (one == first.end() || other->isBefore(*one)) {
            result.push_back(*other++);
        } else {
            result.push_back(*one++);
            result.back().probability += (other++)->probability;
        }
    }
    return result;
}

// One more tray drawn. Adding the same tray to all keeps a list sorted.
std::vector<PooledSum> withAnotherTray(const std::vector<PooledSum>& sums, std::span<const Tray> trays) {
    std::vector<PooledSum> result, moved;
    for (const Tray& tray : trays) {
        moved = sums;
        for (PooledSum& each : moved) {
            each.trials += tray.trials;
            each.successes += tray.successes;
            each.probability /= static_cast<double>(trays.size());
        }
        result = joinedSums(result, moved);
    }
    return result;
}

struct RateProbability {
    double rate{}, probability{};
};

double rateQuantile(std::span<const RateProbability> ascending, double probability) {
    constexpr double reached = 1e-12;
    CompensatedSum sum;
    for (const RateProbability& each : ascending) {
        sum.add(each.probability);
        if (sum.value() >= probability - reached) return each.rate;
    }
    return ascending.back().rate;
}

}  // namespace

TrayBootstrap trayBootstrap(std::span<const Tray> trays, std::span<const double> probabilities) {
    requireTrays("trayBootstrap", trays);
    for (const double each : probabilities)
        if (!(each >= 0 && each <= 1)) throwDomainError("trayBootstrap", "probability", each, "from 0 to 1");
    constexpr std::size_t mostSums = 300'000;
    const std::vector<Tray> counted = traysWithTrials(trays);
    TrayBootstrap bootstrap{.trays = static_cast<int>(counted.size()), .resamples = 0, .mean = {}, .quantiles = {}};
    if (counted.empty()) return bootstrap;
    const double m = bootstrap.trays;
    bootstrap.resamples = 1;
    // Each partial product is itself a binomial coefficient, so it stays whole.
    for (double i = 1; i <= m; ++i) bootstrap.resamples = bootstrap.resamples * (m - 1 + i) / i;
    std::vector<PooledSum> sums{{.trials = 0, .successes = 0, .probability = 1}};
    for (int drawn = 0; drawn < bootstrap.trays; ++drawn) {
        sums = withAnotherTray(sums, counted);
        if (sums.size() > mostSums) return bootstrap;
    }
    std::vector<RateProbability> rates;
    CompensatedSum mean;
    for (const PooledSum& each : sums) {
        rates.push_back({static_cast<double>(each.successes) / static_cast<double>(each.trials), each.probability});
        mean.add(rates.back().rate * each.probability);
    }
    std::sort(rates.begin(), rates.end(), [](const auto& a, const auto& b) { return a.rate < b.rate; });
    bootstrap.mean = mean.value();
    for (const double each : probabilities) bootstrap.quantiles.push_back(rateQuantile(rates, each));
    return bootstrap;
}

}  // namespace stats
