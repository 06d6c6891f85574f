// SPDX-License-Identifier: MIT
#include "stats/several_proportions/chi_square_test.h"

#include <algorithm>
#include <cmath>
#include <vector>

#include "stats/numeric/distribution_tails.h"
#include "stats/numeric/require.h"

namespace stats {

ChiSquareTest chiSquareTest(std::span<const ArmCount> arms) {
    requireArms("chiSquareTest", arms);
    std::vector<EffectiveCount> counts;
    for (const ArmCount& arm : arms) {
        counts.push_back({.successes = static_cast<double>(arm.successes), .trials = static_cast<double>(arm.trials)});
    }
    return chiSquareTestOfEffective(counts);
}

ChiSquareTest chiSquareTestOfEffective(std::span<const EffectiveCount> arms) {
    double successes = 0, trials = 0, fewest = 0;
    int used = 0;
    for (const EffectiveCount& arm : arms) {
        if (!(arm.successes >= 0 && arm.successes <= arm.trials && std::isfinite(arm.trials))) {
            throwDomainError("chiSquareTestOfEffective", "successes", arm.successes, "from 0 to trials");
        }
        if (arm.trials == 0) continue;
        fewest = used == 0 ? arm.trials : std::min(fewest, arm.trials);
        ++used;
        successes += arm.successes;
        trials += arm.trials;
    }
    ChiSquareTest test;
    if (used < 2) return test;
    const double share = successes / trials, failures = trials - successes;
    test.degreesOfFreedom = used - 1;
    test.minExpected = fewest * std::min(successes, failures) / trials;
    test.chiSquare = 0;
    if (successes == 0 || failures <= 0) return test;
    double sum = 0;
    for (const EffectiveCount& arm : arms) {
        if (arm.trials == 0) continue;
        const double excess = arm.successes - arm.trials * share;
        sum += excess * excess / arm.trials;
    }
    test.chiSquare = sum * (trials / successes) * (trials / failures);
    test.p = chiSquareTail(*test.chiSquare, test.degreesOfFreedom);
    return test;
}

}  // namespace stats
