// SPDX-License-Identifier: MIT
#include "stats/planning/tray_sums.h"

#include <algorithm>
#include <cstddef>
#include <utility>

#include "stats/overdispersion/beta_binomial_probabilities.h"

namespace stats {

TraySums::TraySums(std::vector<RatePoint> points, int wanted, double livesOn, int largestTray)
    : wanted_(static_cast<std::size_t>(wanted)), thinning_(livesOn, wanted, largestTray) {
    for (const RatePoint& point : points) {
        sums_.push_back({.point = point, .fewer = {1.0}, .upTo = {}, .lastLaw = {}});
        addUp(sums_.back());
    }
}

void TraySums::addUp(Sum& sum) const {
    sum.upTo.resize(wanted_);
    double upTo = 0;
    for (std::size_t s = 0; s < wanted_; ++s) sum.upTo[s] = upTo += s < sum.fewer.size() ? sum.fewer[s] : 0;
}

std::vector<double> TraySums::lawOf(const Sum& sum, int size) const {
    std::vector<double> law = thinning_.of(betaBinomialProbabilities(size, sum.point.rate, sum.point.correlation));
    if (law.size() > wanted_) law.resize(wanted_);
    return law;
}

void TraySums::addTray(int size) {
    constexpr double impossible = 1e-16, negligible = 1e-20;
    for (Sum& sum : sums_) {
        if (size != lastSize_) sum.lastLaw = lawOf(sum, size);
        const std::vector<double>& law = sum.lastLaw;
        std::vector<double> next(std::min(wanted_, sum.fewer.size() + law.size() - 1));
        for (std::size_t s = 0; s < sum.fewer.size(); ++s) {
            const double before = sum.fewer[s];
            if (before < negligible) continue;
            const std::size_t most = std::min(law.size(), next.size() - s);
            for (std::size_t x = 0; x < most; ++x) next[s + x] += before * law[x];
        }
        sum.fewer = std::move(next);
        addUp(sum);
    }
    lastSize_ = size;
    const auto isDone = [](const Sum& sum) { return sum.upTo.back() < impossible; };
    for (const Sum& sum : sums_)
        if (isDone(sum)) done_ += sum.point.weight;
    std::erase_if(sums_, isDone);
}

double TraySums::chanceWithAnotherTray(int size) const {
    double chance = done_;
    for (const Sum& sum : sums_) {
        const std::vector<double> another = size == lastSize_ ? std::vector<double>() : lawOf(sum, size);
        const std::vector<double>& law = size == lastSize_ ? sum.lastLaw : another;
        double tooFew = 0;
        for (std::size_t x = 0; x < law.size(); ++x) tooFew += law[x] * sum.upTo[wanted_ - 1 - x];
        chance += sum.point.weight * (1 - std::min(1.0, tooFew));
    }
    return std::min(1.0, chance);
}

std::vector<double> TraySums::law() const {
    std::vector<double> law(wanted_);
    for (const Sum& sum : sums_)
        for (std::size_t s = 0; s < sum.fewer.size(); ++s) law[s] += sum.point.weight * sum.fewer[s];
    return law;
}

}  // namespace stats
