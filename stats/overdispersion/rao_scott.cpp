// SPDX-License-Identifier: MIT
#include "stats/overdispersion/rao_scott.h"

#include "stats/numeric/require.h"

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

}  // namespace stats
