// SPDX-License-Identifier: MIT
#include "stats/strata/breslow_day_tarone_test.h"

#include <algorithm>
#include <cmath>

#include "stats/numeric/distribution_tails.h"
#include "stats/strata/mantel_haenszel.h"

namespace stats {
namespace {

// How many of the `count` of a first group would carry a mark if the odds ratio were exactly `ratio`, `others` being
// the size of the second group and `marked` the marks of both: the root of (1 - ratio) A^2 + (others - marked + ratio
// (count + marked)) A - ratio count marked = 0 that lies between the margins.
double fittedCount(double count, double others, double marked, double ratio) {
    const double square = 1 - ratio, linear = others - marked + ratio * (count + marked),
                 constant = ratio * count * marked;
    const double root = std::sqrt(std::max(0.0, linear * linear + 4 * square * constant));
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
        // Each of the four cells as a root of its own: differences from the margins would cancel where a cell is
        // nearly empty.
        const double fitted = fittedCount(n1, n2, t, *ratio), failures = n1 + n2 - t;
        const double v = 1 / (1 / fitted + 1 / fittedCount(n1, n2, failures, 1 / *ratio) +
                              1 / fittedCount(n2, n1, t, 1 / *ratio) + 1 / fittedCount(n2, n1, failures, *ratio));
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
