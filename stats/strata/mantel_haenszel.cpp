// SPDX-License-Identifier: MIT
#include "stats/strata/mantel_haenszel.h"

#include <algorithm>
#include <cmath>
#include <limits>

#include "stats/numeric/normal_quantile.h"
#include "stats/numeric/require.h"

namespace stats {
namespace {

constexpr double kInfinity = std::numeric_limits<double>::infinity();

// The sums of Robins, Breslow and Greenland: R and S are the pooled products of the two diagonals, P and Q the shares
// of the diagonals.
struct DiagonalSums {
    double r{}, s{};
    double pr{}, psPlusQr{}, qs{};
};

DiagonalSums diagonalSums(std::span<const Stratum> strata) {
    DiagonalSums sums;
    for (const Stratum& stratum : strata) {
        if (!isInformative(stratum)) continue;
        const double a = stratum.successes1, b = stratum.trials1 - a;
        const double c = stratum.successes2, d = stratum.trials2 - c;
        const double n = a + b + c + d;
        const double r = a * d / n, s = b * c / n, p = (a + d) / n, q = (b + c) / n;
        sums.r += r;
        sums.s += s;
        sums.pr += p * r;
        sums.psPlusQr += p * s + q * r;
        sums.qs += q * s;
    }
    return sums;
}

}  // namespace

PooledOddsRatio mantelHaenszelOddsRatio(std::span<const Stratum> strata, double level) {
    requireStrata("mantelHaenszelOddsRatio", strata);
    const double z = normalQuantileOfLevel(level);
    const DiagonalSums sums = diagonalSums(strata);
    PooledOddsRatio result{.estimate = {}, .limits = {.low = 0.0, .high = kInfinity}, .standardErrorOfLog = {}};
    if (sums.r == 0 && sums.s == 0) return result;
    if (sums.s == 0) {
        result.estimate = kInfinity;
        return result;
    }
    result.estimate = sums.r / sums.s;
    if (sums.r == 0) return result;
    const double variance =
        sums.pr / (2 * sums.r * sums.r) + sums.psPlusQr / (2 * sums.r * sums.s) + sums.qs / (2 * sums.s * sums.s);
    const double error = std::sqrt(variance);
    result.standardErrorOfLog = error;
    result.limits = {.low = *result.estimate * std::exp(-z * error), .high = *result.estimate * std::exp(z * error)};
    return result;
}

PooledDifference mantelHaenszelDifference(std::span<const Stratum> strata, double level) {
    requireStrata("mantelHaenszelDifference", strata);
    const double z = normalQuantileOfLevel(level);
    double difference = 0, weight = 0, sumP = 0, sumQ = 0;
    for (const Stratum& stratum : strata) {
        if (stratum.trials1 == 0 || stratum.trials2 == 0) continue;
        const double a = stratum.successes1, c = stratum.successes2;
        const double n1 = stratum.trials1, n2 = stratum.trials2, n = n1 + n2;
        difference += (a * n2 - c * n1) / n;
        weight += n1 * n2 / n;
        sumP += (n1 * n1 * c - n2 * n2 * a + n1 * n2 * (n2 - n1) / 2) / (n * n);
        sumQ += (a * (n2 - c) + c * (n1 - a)) / (2 * n);
    }
    if (weight == 0) return {};
    PooledDifference result;
    const double estimate = difference / weight;
    // Rounding can take a variance of 0 a little below it.
    const double error = std::sqrt(std::max(0.0, estimate * sumP + sumQ)) / weight;
    result.estimate = estimate;
    result.standardError = error;
    result.unclippedLimits = {.low = estimate - z * error, .high = estimate + z * error};
    result.limits = {.low = std::max(-1.0, result.unclippedLimits.low),
                     .high = std::min(1.0, result.unclippedLimits.high)};
    return result;
}

}  // namespace stats
