// SPDX-License-Identifier: MIT
#include "stats/planning/critical_region.h"

#include <algorithm>
#include <cstddef>

#include "stats/numeric/bernstein_maximum.h"
#include "stats/overdispersion/beta_binomial_probabilities.h"

namespace stats {

FisherTables::FisherTables(int trials1, int trials2, FisherSide side)
    : trials1_(trials1), trials2_(trials2), side_(side) {
    for (int total = 0; total <= trials1 + trials2; ++total) {
        const CountProbabilities law = hypergeometricProbabilities(trials1, trials2, total);
        first_.push_back(law.first);
        ps_.push_back(fisherPs(law, side));
    }
}

std::vector<double> FisherTables::regionGivenTotal(double threshold) const {
    std::vector<double> region;
    region.reserve(ps_.size());
    for (const auto& ps : ps_) region.push_back(largestFisherPUpTo(ps, threshold));
    return region;
}

double FisherTables::thresholdOfBoschloo(double alpha) const {
    constexpr double held = 1e-10;  // as far as the maximum is known
    // Tables with a p of at most alpha are rejected in any case: that is Fisher's test.
    std::vector<double> beyond;
    for (const auto& ps : ps_)
        for (const double p : ps)
            if (!isFisherPUpTo(p, alpha)) beyond.push_back(p);
    std::sort(beyond.begin(), beyond.end());
    // Ties count as one, so each threshold is the largest of its like.
    std::vector<double> thresholds{alpha};
    for (std::size_t i = 0; i < beyond.size(); ++i)
        if (i + 1 == beyond.size() || !isFisherPUpTo(beyond[i + 1], beyond[i])) thresholds.push_back(beyond[i]);
    const auto isHeld = [&](std::size_t index) {
        return bernsteinMaximum(regionGivenTotal(thresholds[index])) <= alpha + held;
    };
    std::size_t inside = 0, outside = 1;
    while (outside < thresholds.size() && isHeld(outside)) {
        inside = outside;
        outside *= 2;
    }
    outside = std::min(outside, thresholds.size());
    while (outside - inside > 1) {
        const std::size_t middle = inside + (outside - inside) / 2;
        (isHeld(middle) ? inside : outside) = middle;
    }
    return thresholds[inside];
}

CriticalRegion::CriticalRegion(int trials1, int trials2) : trials1_(trials1), trials2_(trials2) {
    for (int total = 0; total <= trials1 + trials2; ++total)
        ends_.push_back({.low = std::max(0, total - trials2) - 1, .high = std::min(trials1, total) + 1});
}

void CriticalRegion::add(const FisherTables& tables, double threshold) {
    for (std::size_t total = 0; total < ends_.size(); ++total) {
        const std::vector<double>& ps = tables.ps_[total];
        const auto isOut = [threshold](double p) { return !isFisherPUpTo(p, threshold); };
        // Tables beyond the law's ends are rarer than any double, hence rejected.
        const int first = tables.first_[total];
        if (tables.side_ != FisherSide::Greater) {
            const auto rejected = std::find_if(ps.begin(), ps.end(), isOut) - ps.begin();
            ends_[total].low = std::max(ends_[total].low, first + static_cast<int>(rejected) - 1);
        }
        if (tables.side_ != FisherSide::Less) {
            const auto rejected = std::find_if(ps.rbegin(), ps.rend(), isOut) - ps.rbegin();
            ends_[total].high =
                std::min(ends_[total].high, first + static_cast<int>(ps.size() - static_cast<std::size_t>(rejected)));
        }
    }
}

template <class Weight>
double CriticalRegion::sumOver(int total, Weight weight) const {
    const Ends ends = ends_[static_cast<std::size_t>(total)];
    const int last = std::min(trials1_, total);
    double sum = 0;
    for (int x = std::max(0, total - trials2_); x <= std::min(last, ends.low); ++x) sum += weight(x);
    for (int x = std::max(ends.low + 1, ends.high); x <= last; ++x) sum += weight(x);
    return sum;
}

double CriticalRegion::probability(double rate1, double rate2) const {
    const std::vector<double> law1 = betaBinomialProbabilities(trials1_, rate1, 0);
    const std::vector<double> law2 = betaBinomialProbabilities(trials2_, rate2, 0);
    double sum = 0;
    for (int total = 0; total <= trials1_ + trials2_; ++total)
        sum += sumOver(total, [&](int x) {
            return law1[static_cast<std::size_t>(x)] * law2[static_cast<std::size_t>(total - x)];
        });
    return std::min(1.0, sum);
}

double CriticalRegion::size() const {
    std::vector<double> givenTotal;
    for (int total = 0; total <= trials1_ + trials2_; ++total) {
        const CountProbabilities law = hypergeometricProbabilities(trials1_, trials2_, total);
        givenTotal.push_back(std::min(1.0, sumOver(total, [&law](int x) {
                                          const int index = x - law.first;
                                          return index >= 0 && index < static_cast<int>(law.probabilities.size())
                                                     ? law.probabilities[static_cast<std::size_t>(index)]
                                                     : 0.0;
                                      })));
    }
    return bernsteinMaximum(givenTotal);
}

}  // namespace stats
