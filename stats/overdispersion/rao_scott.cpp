// SPDX-License-Identifier: MIT
#include "stats/overdispersion/rao_scott.h"

#include <algorithm>

#include "stats/numeric/distribution_tails.h"
#include "stats/numeric/require.h"
#include "stats/several_proportions/chi_square_test.h"

namespace stats {

DesignEffect raoScottDesignEffect(std::span<const Tray> trays) {
    requireTrays("raoScottDesignEffect", trays);
    DesignEffect effect;
    double successes = 0;
    for (const Tray& tray : trays) {
        effect.trays += tray.trials > 0 ? 1 : 0;
        effect.trials += tray.trials;
        successes += tray.successes;
    }
    if (effect.trials == 0) return effect;
    const double n = static_cast<double>(effect.trials), p = successes / n;
    effect.rate = p;
    effect.binomialVariance = p * (1 - p) / n;
    if (effect.trays < 2) return effect;
    double squares = 0;
    for (const Tray& tray : trays) {
        // y - n p as a quotient of whole numbers, so that equal trays give exactly 0.
        const double excess = (tray.successes * n - tray.trials * successes) / n;
        squares += excess * excess;
    }
    const double m = effect.trays;
    effect.ratioVariance = m / (m - 1) * squares / (n * n);
    if (successes == 0 || successes == n) return effect;
    const double designEffect = *effect.ratioVariance / *effect.binomialVariance;
    effect.designEffect = designEffect;
    if (designEffect > 0) {
        effect.effectiveTrials = n / designEffect;
        effect.effectiveSuccesses = successes / designEffect;
    }
    return effect;
}

namespace {

// The mean of the design effects, each with the weight that its arm has in the ordinary chi-square.
std::optional<double> pooledDesignEffect(const RaoScottTest& test, const std::vector<EffectiveCount>& counted) {
    double trials = 0, successes = 0, sum = 0;
    for (const EffectiveCount& arm : counted) {
        trials += arm.trials;
        successes += arm.successes;
    }
    for (const DesignEffect& arm : test.arms) {
        if (!arm.rate) continue;
        if (!arm.designEffect) return {};
        const double rate = *arm.rate;
        sum += (1 - static_cast<double>(arm.trials) / trials) * rate * (1 - rate) * *arm.designEffect;
    }
    const double share = successes / trials;
    return sum / (test.degreesOfFreedom * share * (1 - share));
}

}  // namespace

RaoScottTest raoScottTest(std::span<const std::vector<Tray>> arms) {
    RaoScottTest test;
    std::vector<EffectiveCount> counted, effective;
    for (const std::vector<Tray>& trays : arms) {
        const DesignEffect arm = raoScottDesignEffect(trays);
        test.arms.push_back(arm);
        if (!arm.rate) continue;
        double successes = 0;
        for (const Tray& tray : trays) successes += tray.successes;
        counted.push_back({.successes = successes, .trials = static_cast<double>(arm.trials)});
        if (arm.effectiveTrials) {
            // Rounding may lift the one above the other where nearly all succeeded.
            effective.push_back(
                {.successes = std::min(*arm.effectiveSuccesses, *arm.effectiveTrials), .trials = *arm.effectiveTrials});
        }
    }
    if (counted.size() < 2) return test;
    test.degreesOfFreedom = static_cast<int>(counted.size()) - 1;
    if (effective.size() == counted.size()) {
        const ChiSquareTest adjusted = chiSquareTestOfEffective(effective);
        test.chiSquare = adjusted.chiSquare;
        test.p = adjusted.p;
    }
    test.pooledDesignEffect = pooledDesignEffect(test, counted);
    if (test.pooledDesignEffect.value_or(0) > 0) {
        test.pooledChiSquare = *chiSquareTestOfEffective(counted).chiSquare / *test.pooledDesignEffect;
        test.pooledP = chiSquareTail(*test.pooledChiSquare, test.degreesOfFreedom);
    }
    return test;
}

}  // namespace stats
