// SPDX-License-Identifier: MIT
#include "stats/strata/breslow_day_tarone_test.h"

#include <algorithm>
#include <cmath>

#include "stats/numeric/distribution_tails.h"
#include "stats/strata/mantel_haenszel.h"

namespace stats {
namespace {

// Successes of arm 1, given the margins, if the odds ratio were exactly `ratio`:
// the root of (1 - ratio) A^2 + (n2 - t + ratio (n1 + t)) A - ratio n1 t = 0 that lies between the margins.
double fittedSuccesses(const Stratum& stratum, double ratio) {
    const double n1 = stratum.trials1, n2 = stratum.trials2;
    const double t = static_cast<double>(stratum.successes1) + stratum.successes2;
    const double square = 1 - ratio, linear = n2 - t + ratio * (n1 + t), constant = ratio * n1 * t;
    const double root = std::sqrt(linear * linear + 4 * square * constant);
    return linear >= 0 ? 2 * constant / (linear + root) : (root - linear) / (2 * square);
}

}  // namespace

BreslowDayTaroneTest breslowDayTaroneTest(std::span<const Stratum> strata) {
    requireStrata("breslowDayTaroneTest", strata);
    const std::optional<double> ratio = mantelHaenszelOddsRatio(strata, 0.95).estimate;
    if (!ratio || *ratio == 0 || std::isinf(*ratio)) return {};
    double chiSquare = 0, excess = 0, variance = 0;
    int informative = 0;
    for (const Stratum& stratum : strata) {
        if (!isInformative(stratum)) continue;
        const double n1 = stratum.trials1, n2 = stratum.trials2;
        const double t = static_cast<double>(stratum.successes1) + stratum.successes2;
        const double fitted = fittedSuccesses(stratum, *ratio);
        const double v = 1 / (1 / fitted + 1 / (n1 - fitted) + 1 / (t - fitted) + 1 / (n2 - t + fitted));
        const double e = stratum.successes1 - fitted;
        chiSquare += e * e / v;
        excess += e;
        variance += v;
        ++informative;
    }
    if (informative < 2) return {};
    BreslowDayTaroneTest test;
    test.degreesOfFreedom = informative - 1;
    test.chiSquare = chiSquare;
    test.p = chiSquareTail(chiSquare, test.degreesOfFreedom);
    test.taroneChiSquare = std::max(0.0, chiSquare - excess * excess / variance);
    test.taroneP = chiSquareTail(*test.taroneChiSquare, test.degreesOfFreedom);
    return test;
}

}  // namespace stats
