// SPDX-License-Identifier: MIT
#include "stats/two_proportions/fisher_ordering.h"

#include <algorithm>
#include <cstddef>
#include <numeric>

namespace stats {
namespace {

constexpr double tiedFisherP = 1e-10;
constexpr double tiedLikelihood = 1e-7;

// Positions from the least likely table up. The law has one hill, so they come by taking the smaller end each time.
std::vector<std::size_t> fromLeastLikely(const std::vector<double>& law) {
    std::vector<std::size_t> order;
    order.reserve(law.size());
    for (std::size_t left = 0, right = law.size(); left < right;)
        order.push_back(law[left] <= law[right - 1] ? left++ : --right);
    return order;
}

std::vector<double> twoSidedPs(const std::vector<double>& law) {
    std::vector<double> ps(law.size());
    const std::vector<std::size_t> order = fromLeastLikely(law);
    double sum = 0;
    std::size_t taken = 0;
    for (const std::size_t table : order) {
        while (taken < order.size() && law[order[taken]] <= law[table] * (1 + tiedLikelihood))
            sum += law[order[taken++]];
        ps[table] = std::min(1.0, sum);
    }
    return ps;
}

}  // namespace

std::vector<double> fisherPs(const CountProbabilities& law, FisherSide side) {
    const std::vector<double>& each = law.probabilities;
    if (side == FisherSide::TwoSided) return twoSidedPs(each);
    std::vector<double> ps(each.size());
    if (side == FisherSide::Less)
        std::partial_sum(each.begin(), each.end(), ps.begin());
    else
        std::partial_sum(each.rbegin(), each.rend(), ps.rbegin());
    for (double& p : ps) p = std::min(1.0, p);
    return ps;
}

double largestFisherPUpTo(std::span<const double> ps, double threshold) {
    double largest = 0;
    for (const double p : ps)
        if (p > largest && isFisherPUpTo(p, threshold)) largest = p;
    return largest;
}

bool isFisherPUpTo(double p, double threshold) {
    return p <= threshold * (1 + tiedFisherP);
}

}  // namespace stats
