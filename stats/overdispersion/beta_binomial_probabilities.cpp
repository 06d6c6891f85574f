// SPDX-License-Identifier: MIT
#include "stats/overdispersion/beta_binomial_probabilities.h"

#include <cstddef>

#include "stats/numeric/compensated_sum.h"
#include "stats/numeric/require.h"

namespace stats {
namespace {

// P(x + 1) / P(x).
struct BetaBinomialRatio {
    double trials, mean, correlation;

    [[nodiscard]] double operator()(double x) const {
        const double rest = 1 - correlation;
        return (trials - x) * (mean * rest + x * correlation) /
               ((x + 1) * ((1 - mean) * rest + (trials - x - 1) * correlation));
    }
};

// Where the law is largest, or near enough that no product of ratios from there overflows.
int startOfLaw(const BetaBinomialRatio& ratio, int trials) {
    const double rest = 1 - ratio.correlation;
    const bool fallsFromNone = ratio.mean * rest < ratio.correlation;
    const bool risesToAll = (1 - ratio.mean) * rest < ratio.correlation;
    if (fallsFromNone && risesToAll) return ratio.mean < 0.5 ? 0 : trials;  // largest at both ends
    if (fallsFromNone) return 0;
    if (risesToAll) return trials;
    int lowest = 0, highest = trials;  // one hill: the ratio falls
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

std::vector<double> betaBinomialProbabilities(int trials, double mean, double correlation) {
    if (trials < 0) throwDomainError("betaBinomialProbabilities", "trials", trials, "0 or more");
    if (!(mean >= 0 && mean <= 1)) throwDomainError("betaBinomialProbabilities", "mean", mean, "from 0 to 1");
    if (!(correlation >= 0 && correlation <= 1))
        throwDomainError("betaBinomialProbabilities", "correlation", correlation, "from 0 to 1");
    std::vector<double> law(static_cast<std::size_t>(trials) + 1);
    if (mean == 0 || mean == 1 || (correlation == 1 && trials > 0)) {
        law.front() = 1 - mean;
        law.back() += mean;
        return law;
    }
    const BetaBinomialRatio ratio{static_cast<double>(trials), mean, correlation};
    const auto start = static_cast<std::size_t>(startOfLaw(ratio, trials));
    law[start] = 1;
    CompensatedSum sum;
    sum.add(1);
    for (std::size_t x = start; x < law.size() - 1; ++x) {
        law[x + 1] = law[x] * ratio(static_cast<double>(x));
        sum.add(law[x + 1]);
    }
    for (std::size_t x = start; x > 0; --x) {
        law[x - 1] = law[x] / ratio(static_cast<double>(x - 1));
        sum.add(law[x - 1]);
    }
    for (double& each : law) each /= sum.value();
    return law;
}

}  // namespace stats
