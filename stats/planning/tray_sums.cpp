// SPDX-License-Identifier: MIT
#include "stats/planning/tray_sums.h"

#include <algorithm>
#include <cstddef>
#include <numeric>
#include <utility>

#include "stats/overdispersion/beta_binomial_probabilities.h"

namespace stats {

TraySums::TraySums(std::vector<RatePoint> points, int wanted) : wanted_(static_cast<std::size_t>(wanted)) {
    for (const RatePoint& point : points) sums_.push_back({.point = point, .fewer = {1.0}});
}

void TraySums::addTray(int size) {
    constexpr double impossible = 1e-16, negligible = 1e-20;
    for (Sum& sum : sums_) {
        const std::vector<double> law = betaBinomialProbabilities(size, sum.point.rate, sum.point.correlation);
        std::vector<double> next(std::min(wanted_, sum.fewer.size() + law.size() - 1));
        for (std::size_t s = 0; s < sum.fewer.size(); ++s) {
            const double before = sum.fewer[s];
            if (before < negligible) continue;
            const std::size_t most = std::min(law.size(), next.size() - s);
            for (std::size_t x = 0; x < most; ++x) next[s + x] += before * law[x];
        }
        sum.fewer = std::move(next);
    }
    const auto isDone = [](const Sum& sum) {
        return std::accumulate(sum.fewer.begin(), sum.fewer.end(), 0.0) < impossible;
    };
    for (const Sum& sum : sums_)
        if (isDone(sum)) done_ += sum.point.weight;
    std::erase_if(sums_, isDone);
}

double TraySums::chanceWithAnotherTray(int size) const {
    double chance = done_;
    for (const Sum& sum : sums_) {
        const std::vector<double> law = betaBinomialProbabilities(size, sum.point.rate, sum.point.correlation);
        // P(sum + X < wanted) by the cumulative law of X, from the fewest needed upwards.
        double below = 0, reached = 0;
        std::size_t taken = 0;
        for (std::size_t s = wanted_; s-- > 0;) {
            for (; taken < std::min(law.size(), wanted_ - s); ++taken) below += law[taken];
            if (s < sum.fewer.size()) reached += sum.fewer[s] * below;
        }
        chance += sum.point.weight * (1 - std::min(1.0, reached));
    }
    return std::min(1.0, chance);
}

}  // namespace stats
