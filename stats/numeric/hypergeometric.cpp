// SPDX-License-Identifier: MIT
#include "stats/numeric/hypergeometric.h"

#include <algorithm>
#include <cmath>
#include <numeric>

#include "stats/numeric/require.h"

namespace stats {
namespace {

// P(x + 1) / P(x); it falls with x.
struct HypergeometricRatio {
    double trials1, trials2, successes, odds;

    double operator()(double x) const {
        return (trials1 - x) * (successes - x) / ((x + 1) * (trials2 - successes + x + 1)) * odds;
    }
};

int hypergeometricMode(const HypergeometricRatio& ratio, int lowest, int highest) {
    while (lowest < highest) {
        const int middle = lowest + (highest - lowest) / 2;
        if (ratio(middle) >= 1)
            lowest = middle + 1;
        else
            highest = middle;
    }
    return lowest;
}

}  // namespace

CountProbabilities hypergeometricProbabilities(int trials1, int trials2, int successes, double logOdds, double cutoff) {
    if (trials1 < 0) throwDomainError("hypergeometricProbabilities", "trials1", trials1, "0 or more");
    if (trials2 < 0) throwDomainError("hypergeometricProbabilities", "trials2", trials2, "0 or more");
    requireCounts("hypergeometricProbabilities", successes, trials1 + trials2);
    const int lowest = std::max(0, successes - trials2);
    const int highest = std::min(trials1, successes);
    const HypergeometricRatio ratio{static_cast<double>(trials1), static_cast<double>(trials2),
                                    static_cast<double>(successes), std::exp(logOdds)};
    const int mode = hypergeometricMode(ratio, lowest, highest);
    CountProbabilities result;
    std::vector<double>& weights = result.probabilities;
    double weight = 1;
    for (int x = mode; x > lowest; --x) {
        weight /= ratio(x - 1);
        if (!(weight > cutoff)) break;
        weights.push_back(weight);
    }
    result.first = mode - static_cast<int>(weights.size());
    std::reverse(weights.begin(), weights.end());
    weights.push_back(1);
    weight = 1;
    for (int x = mode; x < highest; ++x) {
        weight *= ratio(x);
        if (!(weight > cutoff)) break;
        weights.push_back(weight);
    }
    const double sum = std::accumulate(weights.begin(), weights.end(), 0.0);
    for (double& each : weights) each /= sum;
    return result;
}

}  // namespace stats
